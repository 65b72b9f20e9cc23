import type { SourceId } from "../../sources/bibliography.ts";
import type { Seen } from "../../sources/source.ts";
import { MEDICINE_IDS, MEDICINES } from "./medicines.data.ts";
import type { PrecautionFinding, PrecautionId, SourcedText } from "./precaution.ts";
import { orderFindings, PRECAUTIONS } from "./table.ts";

export type MedicineId = (typeof MEDICINE_IDS)[number];

/** A sentence to print once, and what called for it. */
export interface Caution {
  readonly text: string;
  readonly source: SourceId;
  readonly seen: Seen;
  readonly from: PrecautionId | MedicineId | "vitals" | "orders";
}

const ORDERS_PREVAIL: Caution = {
  text: "The physician's orders and the local protocol prevail over every limit printed here.",
  source: "common-practice",
  seen: "common-practice",
  from: "orders",
};

/**
 * The cautions of this person's conditions and medicines, each said once, for the head of the plan. A condition whose
 * demands are not in the tables yet is named here.
 */
export function cautionsFor(
  findings: readonly PrecautionFinding[],
  medicines: readonly MedicineId[] = [],
): readonly Caution[] {
  const ofConditions = orderFindings(findings).flatMap((finding) => conditionCautions(finding));
  const ofMedicines = MEDICINE_IDS.filter((id) => medicines.includes(id)).flatMap((id) =>
    MEDICINES[id].cautions.map((caution) => ({ ...caution, from: id })),
  );
  const all = [...ofConditions, ...ofMedicines];
  return dropRepeats(all.length === 0 ? [] : [...all, ORDERS_PREVAIL]);
}

/** Signs that end an exercise because of this person's conditions, besides the general ones. */
export function stopSignsFor(findings: readonly PrecautionFinding[]): readonly Caution[] {
  return dropRepeats(
    orderFindings(findings).flatMap(({ code }) =>
      PRECAUTIONS[code].stopSigns.map((sign: SourcedText) => ({ ...sign, from: code })),
    ),
  );
}

/** Whether the heart rate says anything about the effort with these medicines. */
export function heartRateGuides(medicines: readonly MedicineId[]): boolean {
  return medicines.every((id) => MEDICINES[id].heartRateGuides);
}

function conditionCautions({ code, orders }: PrecautionFinding): readonly Caution[] {
  const row = PRECAUTIONS[code];
  const own: Caution[] = row.cautions.map((caution) => ({ ...caution, from: code }));
  if (row.depth === "positions-only")
    own.push({
      text: `${row.title}: acts by position only in this version; look at each rung yourself.`,
      source: "judgement",
      seen: "judgement",
      from: code,
    });
  if (row.clearWith !== null && orders?.cleared !== true)
    own.push({
      text: `${row.title}: to be cleared with ${row.clearWith}.`,
      source: "common-practice",
      seen: "common-practice",
      from: code,
    });
  return own;
}

function dropRepeats(cautions: readonly Caution[]): readonly Caution[] {
  return cautions.filter((one, index) => cautions.findIndex((other) => other.text === one.text) === index);
}
