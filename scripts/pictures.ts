import { mkdirSync, writeFileSync } from "node:fs";
import {
  contactSheet,
  contactSheetSvg,
  drawFigure,
  drawLegend,
  type Figure,
  type SheetEntry,
} from "../src/figures/index.ts";
import { helperThroughPerson, limbsThroughEachOther } from "../src/figures/skin/passing.ts";
import { ACTIVITIES } from "../src/practice/catalogue.ts";
import { waysFor } from "./drawn-key-poses.ts";
import { drawHand, PICTURED_PEOPLE, type PicturedPerson, type RungToDraw, rungsFor } from "./drawn-rungs.ts";
import { writeReadmePictures } from "./readme-pictures.ts";

const SEEN = 0.6;
/** Clothes and flesh give; a limb deeper in another than this disappears in it [m]. */
const DEEP = 0.03;
const SUPPORT = 0.015;
/** Helper and person drawn further into each other than clothes and flesh give way [m]. */
const INSIDE = 0.025;
const folder = "pictures";

if (process.argv.includes("--readme")) {
  for (const line of writeReadmePictures()) console.log(line);
} else {
  mkdirSync(folder, { recursive: true });
  const found: Found = {
    palm: 0,
    contact: 0,
    hands: 0,
    hidden: 0,
    hiddenClose: 0,
    first: 0,
    through: 0,
    deep: 0,
    supports: 0,
    supportsOff: 0,
    faults: [],
  };
  const only = process.argv[2];
  for (const person of PICTURED_PEOPLE) {
    if (only !== undefined && only !== "--ways" && !person.name.startsWith(only)) continue;
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
  console.log(
    `${found.deep} pictures with an arm or a helper more than ${millimetres(DEEP)} mm inside a body, ${millimetres(found.through)} mm at most; ${found.supportsOff} of ${found.supports} supporting legs more than ${millimetres(SUPPORT)} mm off.`,
  );
  for (const fault of found.faults.slice(0, 120)) console.log(fault);
}

/** The helper in the person, and a free arm of the person in the same body. */
function passesIn(drawn: Figure): readonly {
  whose: string;
  part: string;
  side: string | null;
  into: string;
  intoSide: string | null;
  depth: number;
}[] {
  const [person, helper] = drawn.prepared.people;
  if (person === undefined) return [];
  const own = limbsThroughEachOther(person)
    .filter(({ part }) => part === "forearm" || part === "hand")
    .map((each) => ({ ...each, whose: "own" }));
  const other =
    helper === undefined ? [] : helperThroughPerson(helper, person).map((each) => ({ ...each, whose: "helper's" }));
  return [...own, ...other].sort((a, b) => b.depth - a.depth);
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
  through: number;
  deep: number;
  supports: number;
  supportsOff: number;
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
  const { palmGaps, siteVisible, contactGaps, supportGap } = drawn.checks;
  const palms = palmGaps.map((gap) => Math.abs(gap));
  found.palm = Math.max(found.palm, ...palms);
  for (const { patch, gap } of contactGaps) {
    found.contact = Math.max(found.contact, gap);
    if (gap > 0.005) found.faults.push(`${person} ${name}: ${patch} is ${millimetres(gap)} mm off`);
  }
  if ((siteVisible[0] ?? 1) < SEEN) found.first++;
  const passes = passesIn(drawn);
  const [deepest] = passes;
  if (deepest !== undefined) {
    found.through = Math.max(found.through, deepest.depth);
    if (deepest.depth > DEEP) {
      found.deep++;
      found.faults.push(
        `${person} ${name}: ${deepest.whose} ${deepest.part} ${deepest.side ?? ""} ${millimetres(deepest.depth)} mm in ${deepest.into} ${deepest.intoSide ?? ""}`,
      );
    }
  }
  if (supportGap !== null) {
    found.supports++;
    if (supportGap > SUPPORT) {
      found.supportsOff++;
      found.faults.push(`${person} ${name}: supporting leg ${millimetres(supportGap)} mm off`);
    }
  }
  siteVisible.forEach((share, hand) => {
    const near = drawHand(input, hand);
    const nearShare = near.checks.siteVisible[hand] ?? 0;
    found.hands++;
    if (share < SEEN) {
      found.hidden++;
      found.faults.push(`${person} ${name}: hand ${hand + 1} is ${(share * 100).toFixed(0)} % in sight`);
    }
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
      `palms ${palms.map((gap) => (gap * 1000).toFixed(0)).join(", ")} mm; seen ${seen} %; ${deepest === undefined ? "" : `${deepest.part} ${millimetres(deepest.depth)} mm in ${deepest.into}; `}${supportGap === null ? "" : `leg ${millimetres(supportGap)} mm`}`,
    ],
  });
}
