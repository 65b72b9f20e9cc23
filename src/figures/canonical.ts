import type { Rotation, Vector } from "../quantity/vectors.ts";
import type { Body } from "../mechanics/body/body.ts";
import { buildBody } from "../mechanics/body/build.ts";
import type { Configuration } from "../mechanics/pose/kinematics.ts";

/** The body whose weak side is the left one: pictures are made of it, and turned over for the other side. */
const twins = new WeakMap<Body, Body>();

export function canonicalBody(body: Body): Body {
  if (body.weakAt === 1) return body;
  let twin = twins.get(body);
  if (twin === undefined) {
    twin = buildBody(body.size, 1);
    twins.set(body, twin);
  }
  return twin;
}

const across = (r: Rotation): Rotation => [r[0], -r[1], r[2], -r[3], r[4], -r[5], r[6], -r[7], r[8]];

/** The same pose in the mirror: angles speak of weak and strong and stay as they are. */
export function canonicalConfiguration(body: Body, configuration: Configuration): Configuration {
  if (body.weakAt === 1) return configuration;
  const at = configuration.rootPosition;
  return {
    rootPosition: [at[0], -at[1], at[2]],
    rootRotation: across(configuration.rootRotation),
    angles: configuration.angles,
  };
}

/** A point or direction of the room in the mirror. */
export const canonicalVector = (weakAt: 1 | -1, v: Vector): Vector => (weakAt === 1 ? v : [v[0], -v[1], v[2]]);
