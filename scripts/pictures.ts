import { mkdirSync, writeFileSync } from "node:fs";
import { contactSheet, contactSheetSvg, drawFigure, drawLegend, type FigureInput, type SheetEntry } from "../src/figures/index.ts";
import { buildBody } from "../src/mechanics/body/build.ts";
import { keepPoses } from "../src/plan/assess/prepared.ts";
import { poseOf } from "../src/plan/assess/posed.ts";
import { ACTIVITIES } from "../src/practice/catalogue.ts";

/** Two invented people: a slight older woman weak on the right, a heavy man weak on the left. */
const PEOPLE = [
  { name: "woman-weak-right", words: "woman, 1.63 m, 68 kg, weak on the right", size: { sex: "female", height: 1.63, mass: 68 }, age: 67, weakAt: -1 },
  { name: "man-weak-left", words: "man, 1.77 m, 96 kg, weak on the left", size: { sex: "male", height: 1.77, mass: 96 }, age: 59, weakAt: 1 },
] as const;

const folder = "pictures";
mkdirSync(folder, { recursive: true });
let worstPalm = 0;
let worstContact = 0;
let hidden = 0;
let hands = 0;
const faults: string[] = [];

for (const person of PEOPLE) {
  const body = buildBody(person.size, person.weakAt);
  const keeper = keepPoses({ body, ageYears: person.age, loadShareWeak: {}, ranges: {} });
  for (const activity of ACTIVITIES) {
    const entries: SheetEntry[] = [];
    const close: SheetEntry[] = [];
    for (const rung of activity.rungs) {
      const specification = poseOf(rung);
      const prepared = keeper.prepare(specification);
      if (!prepared.possible) {
        faults.push(`${person.name} ${activity.id}/${rung.id}: does not close: ${prepared.because}`);
        continue;
      }
      const start = rung.start === undefined ? null : keeper.prepare(rung.start);
      const input: FigureInput = {
        body,
        configuration: prepared.pose.configuration,
        specification,
        size: { width: 340 },
        theme: "paper",
        look: { older: person.age >= 60, footwear: specification.contacts.some((contact) => contact.on === "floor") ? "shoes" : "bare" },
        helper: { pose: rung.helper.pose, at: rung.helper.at, hands: rung.helper.hands.map(({ site, does }) => ({ site, does })) },
        ...(start?.possible === true && rung.limbFree !== null ? { start: { configuration: start.pose.configuration, moves: rung.limbFree } } : {}),
      };
      const drawn = drawFigure(input);
      const { palmGaps, siteVisible, contactGaps, overlap } = drawn.checks;
      const palms = palmGaps.map((gap) => Math.abs(typeof gap === "number" ? gap : 0));
      hands += siteVisible.length;
      for (const share of siteVisible) if (share < 0.6) hidden++;
      worstPalm = Math.max(worstPalm, ...palms);
      const notes = [`palms ${palms.map((gap) => (gap * 1000).toFixed(0)).join(", ")} mm; seen ${siteVisible.map((share) => (share * 100).toFixed(0)).join(", ")} %; overlap ${(overlap * 1000).toFixed(0)} mm`];
      for (const [k, gap] of contactGaps.entries()) {
        const metres = typeof gap === "number" ? gap : gap.gap;
        worstContact = Math.max(worstContact, Math.abs(metres));
        if (Math.abs(metres) > 0.005) faults.push(`${person.name} ${activity.id}/${rung.id}: contact ${k} is ${(metres * 1000).toFixed(1)} mm off`);
      }
      entries.push({ svg: drawn.svg, title: `${activity.id} / ${rung.id}`, notes });
      close.push({ svg: drawFigure({ ...input, size: { width: 220, height: 220 }, closeUp: 0 }).svg, title: rung.id });
    }
    const legend = drawLegend([{ id: "weakLimbs", words: "weaker arm and leg" }, { id: "helper", words: "helper" }], 700, "paper").svg;
    writeFileSync(`${folder}/${person.name}-${activity.id}.svg`, contactSheetSvg(entries, 4));
    writeFileSync(`${folder}/${person.name}-${activity.id}-hands.svg`, contactSheetSvg(close, 6));
    writeFileSync(`${folder}/${person.name}-${activity.id}.html`, contactSheet(`${activity.name}: ${person.words}`, [...entries, ...close], 4, legend));
  }
}
console.log(`Pictures of every rung for ${PEOPLE.length} people are in ${folder}/.`);
console.log(`Contacts within ${(worstContact * 1000).toFixed(1)} mm, palms within ${(worstPalm * 1000).toFixed(0)} mm, ${hidden} of ${hands} hand sites less than 60 % visible.`);
for (const fault of faults.slice(0, 40)) console.log(fault);
