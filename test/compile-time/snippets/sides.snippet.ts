// Each line marked with an error code must be refused with that code; every other line must compile.
import {
  type BodySide,
  bodySideOf,
  type Laterality,
  otherBodySide,
  otherSide,
  type Side,
  sideOf,
} from "../../../src/quantity/sides.ts";

declare const side: Side;
declare const bodySide: BodySide;
declare const person: Laterality;

export const weak: Side = "weak";
export const left: BodySide = "left";
export const ofThePerson: BodySide | "either" = bodySideOf(side, person);
export const back: Side = sideOf(bodySide, person);

export const a: Side = "left"; // error TS2322
export const b: BodySide = "weak"; // error TS2322
export const c: Side = bodySide; // error TS2322
export const d: BodySide = side; // error TS2322
export const e = bodySideOf(bodySide, person); // error TS2345
export const f = sideOf(side, person); // error TS2345
export const g = otherSide(bodySide); // error TS2345
export const h = otherBodySide(side); // error TS2345
export const i: BodySide = bodySideOf(side, person); // error TS2322
export const j: Laterality = { weak: "strong" }; // error TS2322
export const k: Laterality = { weak: side }; // error TS2322
export const l: Readonly<Record<Side, number>> = { left: 1, right: 2 }; // error TS2353
export const m = side === bodySide; // error TS2367
export const n = bodySideOf(side); // error TS2554
