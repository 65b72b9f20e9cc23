import { describe, expect, it } from "vitest";
import * as poses from "../../../checks/poses.ts";
import { solveHabitual } from "../equilibrium/habitual.ts";
import { prepareStatics } from "../equilibrium/statics.ts";
import { closePose } from "../pose/close.ts";
import { pointInRoom } from "../pose/kinematics.ts";
import { type Amputation, amputate, wholeMass } from "./amputation.ts";
import type { Body, BodySize } from "./body.ts";
import { buildBody } from "./build.ts";
import { SEGMENT_TABLE } from "./dimensions.data.ts";
import { capacitiesOf } from "./strength-capacities.ts";
import { normEvidence } from "./strength-evidence.ts";
import { evenStrengths, strengthsFrom } from "./strength-keys.ts";

const MAN: BodySize = { sex: "male", height: 1.75, mass: 80 };
const WOMAN: BodySize = { sex: "female", height: 1.62, mass: 68 };
function cut(size: BodySize, amputation: Omit<Amputation, "side">): { body: Body; lost: number } {
  const result = amputate(buildBody(size, 1), { side: "weak", ...amputation });
  if (!result.possible) throw new Error(result.because);
  return result;
}
const massOf = (body: Body): number => body.segments.reduce((sum, each) => sum + each.mass, 0);

describe("an amputated leg", () => {
  it("takes away the published masses of its parts (de Leva 1996; shares of body weight of Mozumdar and Roy 2004)", () => {
    for (const size of [MAN, WOMAN]) {
      const table = SEGMENT_TABLE[size.sex];
      // Nearly the whole shank gone: what de Leva's foot and shank weigh, less the piece that is left.
      const short = cut(size, { level: "transtibial", prosthesis: false, stump: 0.16 });
      const long = cut(size, { level: "transtibial", prosthesis: false, stump: 0.94 });
      expect(long.lost).toBeGreaterThan(table.foot.mass);
      expect(long.lost).toBeLessThan(table.foot.mass + 0.06 * table.shank.mass);
      expect(short.lost).toBeLessThan(table.foot.mass + table.shank.mass);
      expect(short.lost).toBeGreaterThan(table.foot.mass + 0.75 * table.shank.mass);
      const high = cut(size, { level: "transfemoral", prosthesis: false, stump: 0.16 });
      const { foot, shank, thigh } = table;
      console.log(
        `${size.sex}: foot ${(foot.mass * 100).toFixed(1)} % (1.8 published), below the knee ${((foot.mass + shank.mass) * 100).toFixed(1)} (6.5), whole leg ${((foot.mass + shank.mass + thigh.mass) * 100).toFixed(1)} (18.5); usual stumps lose ${(cut(size, { level: "transtibial", prosthesis: false }).lost * 100).toFixed(1)} and ${(cut(size, { level: "transfemoral", prosthesis: false }).lost * 100).toFixed(1)}`,
      );
      expect(Math.abs(foot.mass + shank.mass - 0.065)).toBeLessThan(0.01);
      expect(Math.abs(foot.mass + shank.mass + thigh.mass - 0.185)).toBeLessThan(0.025);
      expect(high.lost).toBeLessThan(foot.mass + shank.mass + thigh.mass);
      expect(wholeMass(size.mass * (1 - high.lost), high.lost)).toBeCloseTo(size.mass, 9);
      // The published female column sums to 0.9999.
      expect(massOf(high.body) / (size.mass * (1 - high.lost))).toBeCloseTo(1, 3);
    }
  });

  it("leaves a stump whose mass and centre close up to the whole part's when nothing is cut", () => {
    const whole = buildBody(MAN, 1);
    const { body } = cut(MAN, { level: "transtibial", prosthesis: false, stump: 0.95 });
    const shank = (each: Body) => each.segments[each.segmentIndex["shank.weak"]];
    expect(shank(body)?.mass ?? 0).toBeGreaterThan(0.95 * (shank(whole)?.mass ?? 1));
    expect(shank(body)?.mass ?? 1).toBeLessThan(shank(whole)?.mass ?? 0);
    // By hand: centre at 0.4395 gives k = -0.726; half of it left weighs 0.5 + 0.363 x 0.25 = 0.5908.
    const half = cut(MAN, { level: "transtibial", prosthesis: false, stump: 0.5 }).body;
    expect((shank(half)?.mass ?? 0) / (shank(whole)?.mass ?? 1)).toBeCloseTo(0.5908, 3);
  });

  it("puts the published mass of a prosthesis in its place (Hale 1990: 0.391 of the sound lower leg)", () => {
    const whole = buildBody(MAN, 1);
    const lower = ["shank.weak", "foot.weak", "toes.weak"] as const;
    const sum = (body: Body) => lower.reduce((all, id) => all + (body.segments[body.segmentIndex[id]]?.mass ?? 0), 0);
    const { body } = cut(MAN, { level: "transfemoral", prosthesis: true });
    console.log(`prosthetic lower leg and foot of a man of 80 kg: ${sum(body).toFixed(2)} kg (1.33 of 3.37 published)`);
    expect(sum(body) / sum(whole)).toBeCloseTo(0.391, 6);
  });

  it("refuses contacts that are gone, by name, and takes those that are left", () => {
    const below = cut(MAN, { level: "transtibial", prosthesis: false }).body;
    const above = cut(MAN, { level: "transfemoral", prosthesis: false }).body;
    const standing = closePose(below, poses.STANDING);
    expect(standing).toMatchObject({ closed: false, because: "this body has no foot, weak side" });
    const kneeling = {
      ...poses.TALL_KNEELING,
      contacts: poses.TALL_KNEELING.contacts.filter((contact) => contact.patch !== "instep.weak"),
    };
    expect(closePose(below, kneeling).closed).toBe(true);
    expect(closePose(above, kneeling)).toMatchObject({ closed: false, because: "this body has no shin, weak side" });
    expect(closePose(above, { ...poses.STANDING, contacts: poses.STANDING.contacts.slice(1) }).closed).toBe(true);
  });

  it("stands on a prosthesis without muscle below the cut, and bears nothing on a bent prosthetic knee", () => {
    const { body } = cut(MAN, { level: "transfemoral", prosthesis: true });
    const straight = {
      ...poses.STANDING,
      weakDeg: { kneeFlexion: 0, hipFlexion: 0, ankleDorsiflexion: 0 },
      strongDeg: { kneeFlexion: 2 },
    };
    const pose = closePose(body, straight);
    if (!pose.closed) throw new Error(pose.because);
    const statics = prepareStatics(body, pose, { sharingWeak: 0.4 });
    const balance = solveHabitual(statics, capacitiesOf(body, 60, pose.configuration.angles, evenStrengths(0.9)));
    if (!balance.balanced) throw new Error(balance.because);
    expect(balance.hardest?.effort ?? 9).toBeLessThan(0.8);
    for (const each of balance.efforts)
      if (each.side === "weak" && /knee|ankle|toes/.test(each.joint)) expect(each.effort).toBeLessThan(0.2);
    const bent = pose.configuration.angles.map((angle, i) => (body.angles[i] === "kneeFlexion.weak" ? 0.5 : angle));
    const knee = body.angleIndex["kneeFlexion.weak"];
    expect(capacitiesOf(body, 60, bent, evenStrengths(1)).down[knee]).toBeLessThan(1);
    expect(capacitiesOf(body, 60, bent, evenStrengths(1)).down[body.angleIndex["kneeFlexion.strong"]]).toBeGreaterThan(
      50,
    );
  });

  it("says that no muscle moves a joint below the cut", () => {
    const { body } = cut(MAN, { level: "transtibial", prosthesis: true });
    const rows = normEvidence(
      body,
      60,
      body.angles.map(() => 0),
    ).filter(({ angle }) => angle === "ankleDorsiflexion.weak");
    expect(rows.length).toBe(2);
    for (const row of rows) expect(row.because).toContain("below an amputation");
  });

  it("is refused where it cannot be", () => {
    const body = buildBody(MAN, 1);
    expect(amputate(body, { side: "weak", level: "transtibial", prosthesis: false, stump: 0.02 }).possible).toBe(false);
    expect(amputate(body, { side: "weak", level: "transtibial", prosthesis: false, stump: Number.NaN }).possible).toBe(
      false,
    );
    const once = amputate(body, { side: "weak", level: "transtibial", prosthesis: false });
    if (!once.possible) throw new Error(once.because);
    expect(amputate(once.body, { side: "strong", level: "transtibial", prosthesis: false }).possible).toBe(false);
  });

  it("mirrors", () => {
    for (const level of ["transtibial", "transfemoral"] as const) {
      const [one, two] = ([1, -1] as const).map((weakAt) => {
        const result = amputate(buildBody(WOMAN, weakAt), { side: "strong", level, prosthesis: true });
        if (!result.possible) throw new Error(result.because);
        return result.body.segments.map(({ mass, centre }) => [mass, centre[0], Math.abs(centre[1]), centre[2]]);
      });
      expect(two).toEqual(one);
    }
  });
});

describe("one leg not to be loaded", () => {
  /** Over the strong foot, the weak one still touching. */
  const ONE_LEG = {
    ...poses.STANDING,
    bothDeg: { ...poses.STANDING.bothDeg, hipAbduction: 0 },
    shift: { toWeakCm: -9 },
    sharing: undefined,
  };
  const { sharing: _, ...pose } = ONE_LEG;
  const body = buildBody(MAN, 1);
  const closed = closePose(body, pose);
  it("carries nothing there, or no more than is allowed, and the other carries the rest", () => {
    if (!closed.closed) throw new Error(closed.because);
    const capacities = capacitiesOf(body, 60, closed.configuration.angles, evenStrengths(1));
    const weight = 80 * 9.81;
    for (const allowed of [0, 0.1]) {
      const balance = solveHabitual(prepareStatics(body, closed, { legLoad: { weak: allowed } }), capacities);
      if (!balance.balanced) throw new Error(balance.because);
      const on = (side: string) =>
        balance.loads.filter((load) => load.patch.endsWith(side)).reduce((sum, load) => sum + load.newtons, 0);
      expect(on("weak")).toBeLessThanOrEqual(allowed * weight + 1e-6);
      expect(on("strong") + on("weak")).toBeCloseTo(weight, 2);
    }
  });
  it("asks of the hip that stands what statics worked by hand says: the rest of the body times its distance", () => {
    if (!closed.closed) throw new Error(closed.because);
    const statics = prepareStatics(body, closed, { legLoad: { weak: 0 } });
    const balance = solveHabitual(statics, capacitiesOf(body, 60, closed.configuration.angles, evenStrengths(1)));
    if (!balance.balanced) throw new Error(balance.because);
    const hip = closed.frames.positions[body.segmentIndex["thigh.strong"]] ?? [0, 0, 0];
    let byHand = 0;
    for (const segment of body.segments) {
      if (["thigh.strong", "shank.strong", "foot.strong", "toes.strong"].includes(segment.id)) continue;
      const frame = closed.frames.positions[segment.index] ?? [0, 0, 0];
      const r = closed.frames.rotations[segment.index];
      if (r === undefined) throw new Error("no frame");
      const [x, y, z] = segment.centre;
      byHand += segment.mass * 9.81 * (frame[1] + r[3] * x + r[4] * y + r[5] * z - hip[1]);
    }
    const effort = balance.efforts.find(
      (each) => each.joint === "hip" && each.side === "strong" && each.angle.startsWith("hipAbduction"),
    );
    console.log(
      `standing on one leg: hip ${Math.abs(effort?.moment ?? 0).toFixed(1)} N.m, by hand ${Math.abs(byHand).toFixed(1)}`,
    );
    // Friction sideways may add a little where the other foot's load is nought: within 2 N.m.
    expect(Math.abs(Math.abs(effort?.moment ?? 0) - Math.abs(byHand))).toBeLessThan(2);
  });
  it("is not held at all with the weight in the middle", () => {
    const middle = poses.closed(body, poses.STANDING);
    const statics = prepareStatics(body, middle.pose, { legLoad: { weak: 0 } });
    const balance = solveHabitual(statics, capacitiesOf(body, 60, middle.pose.configuration.angles, evenStrengths(1)));
    expect(balance).toMatchObject({ balanced: false, endedBy: "contact" });
  });
});

describe("both legs weak", () => {
  it("share a bridge evenly, each hip at the moment worked by hand from de Leva's table", () => {
    const body = buildBody({ sex: "male", height: 1.741, mass: 73 }, 1);
    const half = strengthsFrom((id) => (/^(hip|knee|ankle)/.test(id) ? 0.4 : 0.9));
    // Feet and shoulder blades alone, pushing straight up, so that it can be worked by hand.
    const bare = {
      ...poses.BRIDGE,
      contacts: poses.BRIDGE.contacts.map((contact) =>
        /^(foot|shoulderBlade)/.test(contact.patch) ? contact : ({ ...contact, effort: "rest" } as const),
      ),
    };
    const pose = closePose(body, bare);
    if (!pose.closed) throw new Error(pose.because);
    const statics = prepareStatics(body, pose, { friction: () => 0 });
    const hold = (strengths: typeof half) => {
      const found = solveHabitual(statics, capacitiesOf(body, 60, pose.configuration.angles, strengths));
      if (!found.balanced) throw new Error(found.because);
      return found;
    };
    const balance = hold(half);
    const hip = (side: string) =>
      balance.efforts.find((each) => each.joint === "hip" && each.side === side && each.angle.startsWith("hipFlexion"));
    const [weak, strong] = [hip("weak"), hip("strong")];
    expect(weak?.muscleMoment ?? 0).toBeCloseTo(strong?.muscleMoment ?? 1, 3);
    // By hand, beyond the hip: what the foot carries times its distance, less the leg's weight times its own.
    const hipAt = pose.frames.positions[body.segmentIndex["thigh.weak"]] ?? [0, 0, 0];
    let byHand = 0;
    for (const load of balance.loads) if (load.patch === "foot.weak") byHand += load.newtons * (load.at[0] - hipAt[0]);
    for (const id of ["thigh.weak", "shank.weak", "foot.weak", "toes.weak"] as const) {
      const { mass, centre } = body.segments[body.segmentIndex[id]] ?? { mass: 0, centre: [0, 0, 0] as const };
      byHand -= mass * 9.81 * (pointInRoom(body, pose.frames, body.segmentIndex[id], centre)[0] - hipAt[0]);
    }
    const moment = Math.abs(weak?.moment ?? 0);
    console.log(
      `bridge, both legs at 0.4: ${moment.toFixed(2)} N.m a hip, by hand ${Math.abs(byHand).toFixed(2)} (26.1 with the shank upright and the line straight)`,
    );
    expect(Math.abs(moment - Math.abs(byHand))).toBeLessThan(0.05);
    // The same moment over half the strength and less: the hips' effort grows as strength falls.
    const whole = hold(evenStrengths(0.9)).efforts.find((each) => each.angle === "hipFlexion.weak");
    expect((weak?.effort ?? 0) / (whole?.effort ?? 9)).toBeGreaterThan(1.6);
  });
});
