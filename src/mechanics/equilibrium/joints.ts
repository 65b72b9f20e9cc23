import type { Body } from "../body/body.ts";

/** The angles of one joint, taken together. */
export interface Joint {
  readonly name: string;
  readonly segment: number;
  /** Numbers of its angles. */
  readonly angles: readonly number[];
  /** Three axes: bounded as one by the moment vector in the moving part's frame. */
  readonly ball: boolean;
  /** Joints that share one number lie in series and count once. */
  readonly series: number | null;
}

const JOINT_OF: Readonly<Record<string, string>> = {
  abdomen: "trunk",
  thorax: "trunk",
  head: "neck",
  girdle: "shoulder girdle",
  upperArm: "shoulder",
  forearm: "elbow",
  hand: "wrist",
  thigh: "hip",
  shank: "knee",
  foot: "ankle",
  toes: "toes",
};

const known = new WeakMap<Body, readonly Joint[]>();

/** Every joint of a body with its angles. */
export function jointsOf(body: Body): readonly Joint[] {
  const kept = known.get(body);
  if (kept !== undefined) return kept;
  const joints: Joint[] = [];
  for (const segment of body.segments) {
    const angles = segment.turns.map((turn) => body.angleIndex[turn.id]);
    if (angles.length === 0) continue;
    const part = segment.id.split(".")[0] ?? segment.id;
    joints.push({
      name: JOINT_OF[part] ?? part,
      segment: segment.index,
      angles,
      ball: angles.length === 3,
      series: part === "abdomen" || part === "thorax" ? 0 : null,
    });
  }
  known.set(body, joints);
  return joints;
}
