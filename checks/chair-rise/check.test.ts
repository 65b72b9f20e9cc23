import { describe, expect, it } from "vitest";
import { buildBody } from "../../src/mechanics/body/build.ts";
import { GRAVITY } from "../../src/mechanics/body/strength-norms.ts";
import { at, momentAbout, placed, printRows } from "../holding.ts";
import expected from "./expected.json" with { type: "json" };

describe("rising from a chair", () => {
  it("asks the published sum of hip and knee at lift-off, read per leg", () => {
    const rows = [
      buildBody({ sex: "male", height: 1.75, mass: 80 }, 1),
      buildBody({ sex: "female", height: 1.62, mass: 65 }, 1),
    ].map((body) => {
      // The trunk's lean that brings the centre over the feet, by halving.
      let low = 0;
      let high = 90;
      const lean = (pitch: number) =>
        placed(body, pitch, {
          hipFlexion: 90 + pitch,
          kneeFlexion: 110,
          ankleDorsiflexion: 20,
          shoulderFlexion: pitch + 30,
        });
      for (let k = 0; k < 40; k++) {
        const middle = (low + high) / 2;
        const { frames, centre } = lean(middle);
        if (centre[0] < at(body, frames, "foot.weak")[0] + 0.02) low = middle;
        else high = middle;
      }
      const { frames, centre } = lean((low + high) / 2);
      const foot = at(body, frames, "foot.weak");
      const push = {
        segment: "foot.weak",
        at: [centre[0], foot[1], foot[2]],
        force: [0, 0, (body.size.mass * GRAVITY) / 2],
      } as const;
      const hip = Math.abs(momentAbout(body, frames, "hipFlexion.weak", [push]));
      const knee = Math.abs(momentAbout(body, frames, "kneeFlexion.weak", [push]));
      console.log(
        `chair rise, ${body.size.sex}: centre ${(centre[0] - foot[0]).toFixed(3)} m before the ankle, lean ${low.toFixed(0)} degrees, hip ${hip.toFixed(0)}, knee ${knee.toFixed(0)} N.m`,
      );
      return {
        what: `${body.size.sex}, ${expected.rows[0]?.what ?? ""}`,
        ours: (hip + knee) / body.size.mass,
        theirs: expected.rows[0]?.value ?? 0,
        allowed: 0.25,
      };
    });
    expect(printRows("chair rise", rows)).toEqual([]);
  });
});
