import type { Side } from "../../quantity/sides.ts";
import type { MedicineId } from "./cautions.ts";
import { IMPLIED_FROM } from "./implied.data.ts";
import type { PrecautionFinding, PrecautionId } from "./precaution.ts";
import { orderFindings } from "./table.ts";

/** The findings that stand for a condition even where its code was not ticked. Null is not known. */
export interface ImplyingFindings {
  readonly stroke: boolean;
  readonly shoulder: {
    readonly painAtRest: number | null;
    readonly painOnMovement: number | null;
    readonly gapFingers: number | null;
  };
  readonly signs: {
    readonly pushing: "none" | "mild" | "marked" | null;
    readonly neglect: "none" | "mild" | "marked" | null;
    readonly impulsive: boolean | null;
    readonly faints: boolean | null;
  };
  readonly communication: { readonly aphasia: "none" | "expressive" | "receptive" | "global" | null };
  readonly sensation: Readonly<Record<Side, Readonly<Record<string, "intact" | "reduced" | "absent">>>>;
  readonly tone: Readonly<Record<Side, Readonly<Record<string, string>>>>;
  readonly medicines: readonly MedicineId[];
  readonly precautions: readonly PrecautionFinding[];
}

export interface ImpliedPrecaution {
  readonly code: PrecautionId;
  readonly because: string;
}

/** Conditions that follow from other findings and were not named, each with the finding it follows from. */
export function findImplied(findings: ImplyingFindings): readonly ImpliedPrecaution[] {
  const { shoulder, signs, communication } = findings;
  const aches =
    (shoulder.painAtRest ?? 0) >= IMPLIED_FROM.painAtRest ||
    (shoulder.painOnMovement ?? 0) >= IMPLIED_FROM.painOnMovement;
  const numb = Object.values(findings.sensation.weak).includes("absent");
  const tight = Object.values(findings.tone.weak).some((grade) =>
    IMPLIED_FROM.strongTone.some((strong) => strong === grade),
  );
  const candidates: readonly (readonly [boolean, PrecautionId, string])[] = [
    [findings.stroke, "hemi_shoulder_protect", "One side is weak after a stroke."],
    [
      (shoulder.gapFingers ?? 0) >= IMPLIED_FROM.gapFingers,
      "hemi_shoulder_subluxation_weight",
      "A gap was felt at the weak shoulder.",
    ],
    [aches, "hemi_shoulder_pain", "The weak shoulder was found painful."],
    [isSeen(signs.pushing), "pusher", "Pushing was seen."],
    [isSeen(signs.neglect), "neglect", "Neglect was seen."],
    [signs.impulsive === true, "impulsivity", "Acts before thinking."],
    [signs.faints === true, "orthostatic_hypotension", "Has fainted on coming up."],
    [communication.aphasia !== null && communication.aphasia !== "none", "aphasia", "Aphasia was found."],
    [numb, "sensory_loss", "Touch or position sense of a weak limb is absent."],
    [tight, "spasticity_clonus", "Strong tone was found on the weak side."],
    [findings.medicines.includes("anticoagulant"), "anticoagulant_bleed", "Takes a blood thinner."],
  ];
  return candidates
    .filter(([follows, code]) => follows && !findings.precautions.some((named) => named.code === code))
    .map(([, code, because]) => ({ code, because }));
}

/** The conditions named and those that follow, as one list to judge by. */
export function completePrecautions(findings: ImplyingFindings): readonly PrecautionFinding[] {
  const implied = findImplied(findings).map(({ code, because }) => ({ code, note: because }));
  return orderFindings([...findings.precautions, ...implied]);
}

function isSeen(sign: "none" | "mild" | "marked" | null): boolean {
  return sign === "mild" || sign === "marked";
}
