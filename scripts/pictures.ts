import { mkdirSync, writeFileSync } from "node:fs";
import { contactSheet, contactSheetSvg, drawFigure, drawLegend, type SheetEntry } from "../src/figures/index.ts";
import { ACTIVITIES } from "../src/practice/catalogue.ts";
import { waysFor } from "./drawn-key-poses.ts";
import { drawHand, PICTURED_PEOPLE, type PicturedPerson, type RungToDraw, rungsFor } from "./drawn-rungs.ts";
import { writeReadmePictures } from "./readme-pictures.ts";

const SEEN = 0.6;
/** Helper and person drawn further into each other than clothes and flesh give way [m]. */
const INSIDE = 0.025;
const folder = "pictures";

if (process.argv.includes("--readme")) {
  for (const line of writeReadmePictures()) console.log(line);
} else {
  mkdirSync(folder, { recursive: true });
  const found = { palm: 0, contact: 0, hands: 0, hidden: 0, hiddenClose: 0, first: 0, faults: [] as string[] };
  for (const person of PICTURED_PEOPLE) {
    drawWays(person, found);
    if (process.argv.includes("--ways")) continue;
    const rungs = rungsFor(person);
    for (const activity of ACTIVITIES) {
      const entries: SheetEntry[] = [];
      const close: SheetEntry[] = [];
      for (const each of rungs.filter((rung) => rung.activity === activity))
        draw(person.name, each, entries, close, found);
      const legend = drawLegend(
        [
          { id: "weakLimbs", words: "weaker arm and leg" },
          { id: "helper", words: "helper" },
        ],
        700,
        "paper",
      ).svg;
      writeFileSync(`${folder}/${person.name}-${activity.id}.svg`, contactSheetSvg(entries, 4));
      writeFileSync(`${folder}/${person.name}-${activity.id}-hands.svg`, contactSheetSvg(close, 6));
      writeFileSync(
        `${folder}/${person.name}-${activity.id}.html`,
        contactSheet(`${activity.name}: ${person.words}`, [...entries, ...close], 4, legend),
      );
    }
  }
  console.log(
    `Pictures of every rung and of every way with key poses for ${PICTURED_PEOPLE.length} people are in ${folder}/.`,
  );
  console.log(`Contacts within ${millimetres(found.contact)} mm, palms within ${millimetres(found.palm)} mm.`);
  console.log(
    `Of ${found.hands} hands ${found.hidden} are less than 60 % in sight in the main picture, ${found.hiddenClose} of them in their close-up too; ${found.first} rungs do not show the first hand.`,
  );
  for (const fault of found.faults.slice(0, 60)) console.log(fault);
}

function millimetres(metres: number): string {
  return (metres * 1000).toFixed(1);
}

interface Found {
  palm: number;
  contact: number;
  hands: number;
  hidden: number;
  hiddenClose: number;
  first: number;
  readonly faults: string[];
}

/** The key poses of every way side by side, one sheet a way. */
function drawWays(person: PicturedPerson, found: Found): void {
  for (const { transition, moments } of waysFor(person)) {
    const entries = moments.flatMap(({ key, name, input, because }): SheetEntry[] => {
      if (input === null) {
        found.faults.push(`${person.name} ${name}: does not close: ${because}`);
        return [];
      }
      const { svg, checks } = drawFigure(input);
      const palms = checks.palmGaps.map((gap) => Math.abs(gap));
      found.palm = Math.max(found.palm, ...palms);
      for (const { patch, gap } of checks.contactGaps) {
        found.contact = Math.max(found.contact, gap);
        if (gap > 0.005) found.faults.push(`${person.name} ${name}: ${patch} is ${millimetres(gap)} mm off`);
      }
      if (palms.some((gap) => gap > 0.015))
        found.faults.push(`${person.name} ${name}: palms ${palms.map(millimetres).join(", ")} mm off`);
      const seen = checks.siteVisible.map((share) => (share * 100).toFixed(0)).join(", ");
      if (checks.overlap > INSIDE)
        found.faults.push(`${person.name} ${name}: the helper is ${millimetres(checks.overlap)} mm inside the person`);
      if (checks.siteVisible.every((share) => share < SEEN))
        found.faults.push(`${person.name} ${name}: no hand is in sight (${seen} %)`);
      return [
        {
          svg,
          title: `step ${key.step}`,
          notes: [
            `palms ${palms.map((gap) => (gap * 1000).toFixed(0)).join(", ")} mm; seen ${seen} %; overlap ${(checks.overlap * 1000).toFixed(0)} mm`,
          ],
        },
      ];
    });
    writeFileSync(`${folder}/${person.name}-way-${transition.id}.svg`, contactSheetSvg(entries, 4));
    writeFileSync(
      `${folder}/${person.name}-way-${transition.id}.html`,
      contactSheet(`${transition.name}: ${person.words}`, entries, 4, ""),
    );
  }
}

function draw(person: string, each: RungToDraw, entries: SheetEntry[], close: SheetEntry[], found: Found): void {
  const { input, rung, name } = each;
  if (input === null) {
    found.faults.push(`${person} ${name}: does not close: ${each.because}`);
    return;
  }
  const drawn = drawFigure(input);
  const { palmGaps, siteVisible, contactGaps, overlap } = drawn.checks;
  const palms = palmGaps.map((gap) => Math.abs(gap));
  found.palm = Math.max(found.palm, ...palms);
  for (const { patch, gap } of contactGaps) {
    found.contact = Math.max(found.contact, gap);
    if (gap > 0.005) found.faults.push(`${person} ${name}: ${patch} is ${millimetres(gap)} mm off`);
  }
  if ((siteVisible[0] ?? 1) < SEEN) found.first++;
  siteVisible.forEach((share, hand) => {
    const near = drawHand(input, hand);
    const nearShare = near.checks.siteVisible[hand] ?? 0;
    found.hands++;
    if (share < SEEN) found.hidden++;
    if (share < SEEN && nearShare < SEEN) {
      found.hiddenClose++;
      found.faults.push(
        `${person} ${name}: hand ${hand + 1} is ${(share * 100).toFixed(0)} % in sight, close up ${(nearShare * 100).toFixed(0)} %`,
      );
    }
    close.push({
      svg: near.svg,
      title: `${rung.id} ${hand + 1}`,
      notes: [`${rung.helper.hands[hand]?.site ?? ""}: ${(nearShare * 100).toFixed(0)} %`],
    });
  });
  const seen = siteVisible.map((share) => (share * 100).toFixed(0)).join(", ");
  entries.push({
    svg: drawn.svg,
    title: name.length > 44 ? rung.id : name.replace("/", " / "),
    notes: [
      `palms ${palms.map((gap) => (gap * 1000).toFixed(0)).join(", ")} mm; seen ${seen} %; overlap ${(overlap * 1000).toFixed(0)} mm`,
    ],
  });
}
