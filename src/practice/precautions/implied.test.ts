import { describe, expect, it } from "vitest";
import { completePrecautions, findImplied, type ImplyingFindings } from "./implied.ts";

const NOTHING: ImplyingFindings = {
  stroke: false,
  shoulder: { painAtRest: null, painOnMovement: null, gapFingers: null },
  signs: { pushing: null, neglect: null, impulsive: null, faints: null },
  communication: { aphasia: null },
  sensation: { weak: {}, strong: {} },
  tone: { weak: {}, strong: {} },
  medicines: [],
  precautions: [],
};
const codes = (more: Partial<ImplyingFindings>): readonly string[] =>
  findImplied({ ...NOTHING, ...more }).map(({ code }) => code);
const shoulder = (painAtRest: number, painOnMovement: number, gapFingers: number): Partial<ImplyingFindings> => ({
  shoulder: { painAtRest, painOnMovement, gapFingers },
});

// Common practice, no source; the figures are proposals of this project.
describe("conditions that follow from findings", () => {
  it("follows nothing from nothing", () => {
    expect(codes({})).toEqual([]);
  });

  it("takes the shoulder for painful from pain at rest or four of ten on movement", () => {
    expect(codes(shoulder(0, 3, 0))).toEqual([]);
    expect(codes(shoulder(0, 4, 0))).toEqual(["hemi_shoulder_pain"]);
    expect(codes(shoulder(1, 0, 0))).toEqual(["hemi_shoulder_pain"]);
    expect(codes(shoulder(0, 0, 0.5))).toEqual([]);
    expect(codes(shoulder(0, 0, 1))).toEqual(["hemi_shoulder_subluxation_weight"]);
  });

  it("takes signs, speech, sense, tone and medicine as the conditions they are", () => {
    expect(codes({ signs: { pushing: "mild", neglect: "marked", impulsive: true, faints: true } })).toEqual([
      "pusher",
      "neglect",
      "impulsivity",
      "orthostatic_hypotension",
    ]);
    expect(codes({ communication: { aphasia: "expressive" } })).toEqual(["aphasia"]);
    expect(codes({ sensation: { weak: { armTouch: "absent" }, strong: {} } })).toEqual(["sensory_loss"]);
    expect(codes({ sensation: { weak: { armTouch: "reduced" }, strong: { legTouch: "absent" } } })).toEqual([]);
    expect(codes({ tone: { weak: { anklePlantarflexors: "3" }, strong: {} } })).toEqual(["spasticity_clonus"]);
    expect(codes({ tone: { weak: { anklePlantarflexors: "2" }, strong: {} } })).toEqual([]);
    expect(codes({ medicines: ["anticoagulant"] })).toEqual(["anticoagulant_bleed"]);
  });

  it("keeps what was named, with its orders, and adds the rest once", () => {
    const named = { code: "neglect", note: "weak side of the plate" } as const;
    const all = completePrecautions({
      ...NOTHING,
      stroke: true,
      signs: { ...NOTHING.signs, neglect: "marked" },
      precautions: [named],
    });
    expect(all.map(({ code }) => code)).toEqual(["hemi_shoulder_protect", "neglect"]);
    expect(all[1]).toEqual(named);
  });
});
