/**
 * Turns picture coordinates into the text of a path. Numbers are whole tenths of a unit; a mirrored picture counts them
 * from the other edge, so that it is the exact mirror.
 */
export class Ink {
  /** Width of the picture in units. */
  readonly width: number;
  readonly mirrored: boolean;

  constructor(width: number, mirrored: boolean) {
    this.width = width;
    this.mirrored = mirrored;
  }

  /** Tenths of a unit across. */
  x(units: number): number {
    const tenths = Math.round(units * 10);
    return this.mirrored ? this.width * 10 - tenths : tenths;
  }
  y(units: number): number {
    return Math.round(units * 10);
  }
  point(x: number, y: number): string {
    return `${text(this.x(x))} ${text(this.y(y))}`;
  }
  /** A number across that is not flipped twice: for attributes. */
  across(units: number): string {
    return text(this.x(units));
  }
  down(units: number): string {
    return text(this.y(units));
  }

  /** A path of cubic pieces given in samples. */
  cubics(path: readonly number[], density: number, closed: boolean): string {
    const k = 1 / density;
    let px = this.x((path[0] ?? 0) * k);
    let py = this.y((path[1] ?? 0) * k);
    let out = `M${text(px)} ${text(py)}c`;
    for (let i = 2; i + 5 < path.length; i += 6) {
      for (let j = 0; j < 6; j += 2) {
        const x = this.x((path[i + j] ?? 0) * k);
        const y = this.y((path[i + j + 1] ?? 0) * k);
        const dx = text(x - px);
        const dy = text(y - py);
        out += `${i === 2 && j === 0 ? "" : dx.startsWith("-") ? "" : " "}${dx}${dy.startsWith("-") ? "" : " "}${dy}`;
        if (j === 4) {
          px = x;
          py = y;
        }
      }
    }
    return closed ? `${out}z` : out;
  }

  /** A polyline or polygon given in units. */
  polyline(points: readonly (readonly [number, number])[], closed: boolean): string {
    return `M${points.map(([x, y]) => this.point(x, y)).join("L")}${closed ? "z" : ""}`;
  }
}

/** Whole tenths as a short decimal. */
export function text(tenths: number): string {
  const whole = Math.trunc(tenths / 10);
  const rest = Math.abs(tenths % 10);
  if (rest === 0) return `${whole}`;
  return `${tenths < 0 && whole === 0 ? "-" : ""}${whole === 0 ? "" : whole}.${rest}`;
}
