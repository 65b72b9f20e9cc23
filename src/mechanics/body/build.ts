import { ProgrammingError } from "../../quantity/programming-error.ts";
import type { Vector } from "../../quantity/vectors.ts";
import type { Body, BodySize, Segment, Turn } from "./body.ts";
import {
  ANKLE_HEIGHT_OF_STATURE,
  GIRDLE_MASS,
  REFERENCE_STATURE_MM,
  SEGMENT_TABLE,
  SHOULDER_HALF_SPACING_MM,
  TOE_SHARE_OF_FOOT,
} from "./dimensions.data.ts";
import type { AngleId, LimbAngle, LimbSegment, SegmentId } from "./names.ts";

/** Mass over height [kg/m] of the figure's reference build, from which girth is measured. */
const REFERENCE_BUILD = { male: 73 / 1.741, female: 60 / 1.65 } as const;

const Y: Vector = [0, 1, 0];
const MINUS_Y: Vector = [0, -1, 0];

interface Draft extends Omit<Segment, "index" | "parent"> {
  readonly parentId: SegmentId | null;
}

/**
 * Builds the jointed body of a person: 20 rigid parts, 43 joint angles and a free pelvis.
 * @param size sex, height [m] and mass [kg]
 * (anything but numbers above nothing is the caller's mistake: refuseSize says in words what is wrong)
 * @param weakAt +1 if the weak side is the left one, -1 if the right one
 * @source deleva1996 for lengths, masses, centres and radii, scaled to height and mass; the vertex is put at the stature
 */
export function buildBody(size: BodySize, weakAt: 1 | -1): Body {
  if (!(size.height > 0 && size.mass > 0 && Number.isFinite(size.height * size.mass)))
    throw new ProgrammingError("no body without a height and a mass: ask refuseSize first");
  const table = SEGMENT_TABLE[size.sex];
  const mm = size.height / REFERENCE_STATURE_MM[size.sex];
  const length = {
    head: table.headFromVertexToCervicale.lengthMm * mm,
    upperTrunk: table.upperTrunk.lengthMm * mm,
    middleTrunk: table.middleTrunk.lengthMm * mm,
    lowerTrunk: table.lowerTrunk.lengthMm * mm,
    upperArm: table.upperArm.lengthMm * mm,
    forearm: table.forearm.lengthMm * mm,
    hand: table.handToFingertipMm * mm,
    palm: table.hand.lengthMm * mm,
    thigh: table.thigh.lengthMm * mm,
    shank: table.shank.lengthMm * mm,
    foot: table.foot.lengthMm * mm,
  };
  const ankleHeight = ANKLE_HEIGHT_OF_STATURE * size.height;
  const hipHeight = ankleHeight + length.shank + length.thigh;
  const waist = length.lowerTrunk;
  const ribs = waist + length.middleTrunk;
  const notch = ribs + length.upperTrunk;
  const shoulder = table.shoulderAboveHipMm * mm;
  // The published trunk is longer than a standing person's is high: the neck is set so that the vertex meets the stature.
  const neck = size.height - hipHeight - length.head;
  const shoulderOut = SHOULDER_HALF_SPACING_MM[size.sex] * mm;
  const collarOut = 0.02 * mm * 1000;
  const hipOut = (table.hipSpacingMm / 2) * mm;

  const drafts: Draft[] = [];
  const scaled = (radii: readonly [number, number, number], by: number): Vector => [
    radii[0] * by,
    radii[1] * by,
    radii[2] * by,
  ];

  const upperTrunkMass = table.upperTrunk.mass * size.mass;
  const girdleMass = GIRDLE_MASS * size.mass;
  const girdleCentreHeight = shoulder - ribs - 0.02 * mm * 1000;
  const upperCentre = notch - ribs - table.upperTrunk.centre * length.upperTrunk;
  const thoraxMass = upperTrunkMass - 2 * girdleMass;
  const thoraxCentre = (upperCentre * upperTrunkMass - 2 * girdleMass * girdleCentreHeight) / thoraxMass;

  drafts.push(
    {
      id: "pelvis",
      parentId: null,
      side: null,
      lateral: 0,
      joint: [0, 0, 0],
      turns: [],
      mass: table.lowerTrunk.mass * size.mass,
      centre: [0, 0, waist - table.lowerTrunk.centre * length.lowerTrunk],
      gyration: scaled(table.lowerTrunk.gyration, length.lowerTrunk),
      length: waist,
    },
    {
      id: "abdomen",
      parentId: "pelvis",
      side: null,
      lateral: 0,
      joint: [0, 0, waist],
      turns: midTurns("lumbarFlexion", "lumbarSideBend", "lumbarTurn", weakAt),
      mass: table.middleTrunk.mass * size.mass,
      centre: [0, 0, length.middleTrunk * (1 - table.middleTrunk.centre)],
      gyration: scaled(table.middleTrunk.gyration, length.middleTrunk),
      length: length.middleTrunk,
    },
    {
      id: "thorax",
      parentId: "abdomen",
      side: null,
      lateral: 0,
      joint: [0, 0, length.middleTrunk],
      turns: midTurns("thoraxFlexion", "thoraxSideBend", "thoraxTurn", weakAt),
      mass: thoraxMass,
      centre: [0, 0, thoraxCentre],
      gyration: scaled(table.upperTrunk.gyration, length.upperTrunk),
      length: neck - ribs,
    },
    {
      id: "head",
      parentId: "thorax",
      side: null,
      lateral: 0,
      joint: [0, 0, neck - ribs],
      turns: midTurns("neckFlexion", "neckSideBend", "neckTurn", weakAt),
      mass: table.headFromVertexToCervicale.mass * size.mass,
      centre: [0, 0, length.head * (1 - table.headFromVertexToCervicale.centre)],
      gyration: scaled(table.headFromVertexToCervicale.gyration, length.head),
      length: length.head,
    },
  );

  for (const side of ["weak", "strong"] as const) {
    const lateral = (side === "weak" ? weakAt : -weakAt) as 1 | -1;
    const limb = (name: LimbSegment): SegmentId => `${name}.${side}`;
    const angle = (name: LimbAngle, axis: Vector): Turn => ({ id: `${name}.${side}`, axis });
    const out = (x: number, y: number, z: number): Vector => [x, y * lateral, z];
    const forwardAxis: Vector = [lateral, 0, 0];
    const upAxis: Vector = [0, 0, lateral];
    const against = (v: Vector): Vector => [-v[0], -v[1], -v[2]];
    const toesFrom = 0.47 * length.foot;
    const heelBehind = 0.25 * length.foot;
    const footMass = table.foot.mass * size.mass;
    const toesMass = TOE_SHARE_OF_FOOT * footMass;
    const toesCentre = 0.1 * length.foot;
    const wholeFoot = table.foot.centre * length.foot - heelBehind;
    const base = { side, lateral } as const;
    drafts.push(
      {
        ...base,
        id: limb("girdle"),
        parentId: "thorax",
        joint: out(0, collarOut, shoulder - ribs),
        turns: [angle("girdleElevation", forwardAxis), angle("girdleProtraction", against(upAxis))],
        mass: girdleMass,
        centre: out(0, 0.6 * (shoulderOut - collarOut), girdleCentreHeight - (shoulder - ribs)),
        gyration: scaled([0.3, 0.3, 0.3], shoulderOut),
        length: shoulderOut - collarOut,
      },
      {
        ...base,
        id: limb("upperArm"),
        parentId: limb("girdle"),
        joint: out(0, shoulderOut - collarOut, 0),
        turns: [
          angle("shoulderFlexion", MINUS_Y),
          angle("shoulderAbduction", forwardAxis),
          angle("shoulderExternalRotation", upAxis),
        ],
        mass: table.upperArm.mass * size.mass,
        centre: [0, 0, -table.upperArm.centre * length.upperArm],
        gyration: scaled(table.upperArm.gyration, length.upperArm),
        length: length.upperArm,
      },
      {
        ...base,
        id: limb("forearm"),
        parentId: limb("upperArm"),
        joint: [0, 0, -length.upperArm],
        turns: [angle("elbowFlexion", MINUS_Y), angle("pronation", against(upAxis))],
        mass: table.forearm.mass * size.mass,
        centre: [0, 0, -table.forearm.centre * length.forearm],
        gyration: scaled(table.forearm.gyration, length.forearm),
        length: length.forearm,
      },
      {
        ...base,
        id: limb("hand"),
        parentId: limb("forearm"),
        joint: [0, 0, -length.forearm],
        turns: [angle("wristExtension", Y), angle("radialDeviation", forwardAxis)],
        mass: table.hand.mass * size.mass,
        centre: [0, 0, -table.hand.centre * length.palm],
        gyration: scaled(table.hand.gyration, length.palm),
        length: length.hand,
      },
      {
        ...base,
        id: limb("thigh"),
        parentId: "pelvis",
        joint: out(0, hipOut, 0),
        turns: [angle("hipFlexion", MINUS_Y), angle("hipAbduction", forwardAxis), angle("hipExternalRotation", upAxis)],
        mass: table.thigh.mass * size.mass,
        centre: [0, 0, -table.thigh.centre * length.thigh],
        gyration: scaled(table.thigh.gyration, length.thigh),
        length: length.thigh,
      },
      {
        ...base,
        id: limb("shank"),
        parentId: limb("thigh"),
        joint: [0, 0, -length.thigh],
        turns: [angle("kneeFlexion", Y), angle("kneeExternalRotation", upAxis)],
        mass: table.shank.mass * size.mass,
        centre: [0, 0, -table.shank.centre * length.shank],
        gyration: scaled(table.shank.gyration, length.shank),
        length: length.shank,
      },
      {
        ...base,
        id: limb("foot"),
        parentId: limb("shank"),
        joint: [0, 0, -length.shank],
        turns: [angle("ankleDorsiflexion", MINUS_Y), angle("inversion", against(forwardAxis))],
        mass: footMass - toesMass,
        centre: [
          (wholeFoot * footMass - toesMass * (toesFrom + toesCentre)) / (footMass - toesMass),
          0,
          -0.5 * ankleHeight,
        ],
        // The table's long axis of the foot points forward.
        gyration: [
          table.foot.gyration[2] * length.foot,
          table.foot.gyration[1] * length.foot,
          table.foot.gyration[0] * length.foot,
        ],
        length: toesFrom,
      },
      {
        ...base,
        id: limb("toes"),
        parentId: limb("foot"),
        joint: [toesFrom, 0, -0.8 * ankleHeight],
        turns: [angle("toeExtension", MINUS_Y)],
        mass: toesMass,
        centre: [toesCentre, 0, 0],
        gyration: scaled([0.06, 0.06, 0.06], length.foot),
        length: length.foot - heelBehind - toesFrom,
      },
    );
  }
  return assemble(size, weakAt, drafts, mm);
}

function midTurns(flexion: AngleId, sideBend: AngleId, turn: AngleId, weakAt: 1 | -1): readonly Turn[] {
  return [
    { id: flexion, axis: Y },
    { id: sideBend, axis: [-weakAt, 0, 0] },
    { id: turn, axis: [0, 0, weakAt] },
  ];
}

function assemble(size: BodySize, weakAt: 1 | -1, drafts: readonly Draft[], metresPerMm: number): Body {
  const segmentIndex: Partial<Record<SegmentId, number>> = {};
  const angleIndex: Partial<Record<AngleId, number>> = {};
  const angles: AngleId[] = [];
  const segmentOfAngle: number[] = [];
  const segments = drafts.map(({ parentId, ...draft }, index): Segment => {
    const parent = parentId === null ? null : segmentIndex[parentId];
    if (parent === undefined) throw new ProgrammingError(`${draft.id} is listed before its parent`);
    segmentIndex[draft.id] = index;
    for (const turn of draft.turns) {
      angleIndex[turn.id] = angles.length;
      angles.push(turn.id);
      segmentOfAngle.push(index);
    }
    return { ...draft, index, parent };
  });
  return {
    size,
    weakAt,
    segments,
    angles,
    segmentIndex: segmentIndex as Record<SegmentId, number>,
    angleIndex: angleIndex as Record<AngleId, number>,
    segmentOfAngle,
    girth: Math.sqrt(size.mass / size.height / REFERENCE_BUILD[size.sex]),
    stature: metresPerMm * 1000,
  };
}
