import { cross, dot, scale, subtract, unit, type Vector } from "../../quantity/vectors.ts";

/** From where a figure is seen [degrees]: azimuth 0 from the person's front or foot end, 90 from the weak side. */
export interface View {
  readonly azimuthDeg: number;
  readonly elevationDeg: number;
}

/** A long lens aimed at a point. Picture coordinates are units, y downward. */
export interface Camera {
  readonly eye: Vector;
  readonly right: Vector;
  readonly up: Vector;
  readonly forward: Vector;
  /** Units per metre at the distance of the aim. */
  readonly zoom: number;
  readonly distance: number;
  readonly centreX: number;
  readonly centreY: number;
  /** What is nearer to the eye than this is left out [m]: a close-up looks past a back that bends over the hand. */
  readonly cutAt?: number;
}

/** Distance of the eye [m]: far enough that near limbs do not swell. */
const LENS_DISTANCE = 6;

/** @param weakAt +1 where the weak side is at y > 0 */
export function aimCamera(view: View, weakAt: number, aim: Vector): Camera {
  const azimuth = (view.azimuthDeg * Math.PI) / 180;
  const elevation = (view.elevationDeg * Math.PI) / 180;
  const toEye: Vector = [
    Math.cos(elevation) * Math.cos(azimuth),
    Math.cos(elevation) * Math.sin(azimuth) * weakAt,
    Math.sin(elevation),
  ];
  const forward = scale(toEye, -1);
  const right = unit(cross(forward, [0, 0, 1]));
  return {
    eye: [aim[0] + toEye[0] * LENS_DISTANCE, aim[1] + toEye[1] * LENS_DISTANCE, aim[2] + toEye[2] * LENS_DISTANCE],
    right,
    up: cross(right, forward),
    forward,
    zoom: 1,
    distance: LENS_DISTANCE,
    centreX: 0,
    centreY: 0,
  };
}

/** A point of the room in the picture: x, y in units, and its distance along the line of sight [m]. */
export function project(camera: Camera, at: Vector): readonly [number, number, number] {
  const from = subtract(at, camera.eye);
  const depth = dot(from, camera.forward);
  const k = (camera.zoom * camera.distance) / depth;
  return [camera.centreX + dot(from, camera.right) * k, camera.centreY - dot(from, camera.up) * k, depth];
}

export interface Bounds {
  readonly fromX: number;
  readonly toX: number;
  readonly fromY: number;
  readonly toY: number;
}

/** What of the picture plane the points take up, in units of the camera as it stands. */
export function boundsOf(camera: Camera, clouds: readonly Float64Array[]): Bounds {
  let fromX = Number.MAX_VALUE;
  let toX = -Number.MAX_VALUE;
  let fromY = Number.MAX_VALUE;
  let toY = -Number.MAX_VALUE;
  const { eye, right, up, forward } = camera;
  const k = camera.zoom * camera.distance;
  // Written out: every view that is tried goes through all points.
  for (const cloud of clouds) {
    for (let i = 0; i < cloud.length; i += 3) {
      const dx = (cloud[i] ?? 0) - eye[0];
      const dy = (cloud[i + 1] ?? 0) - eye[1];
      const dz = (cloud[i + 2] ?? 0) - eye[2];
      const nearer = k / (dx * forward[0] + dy * forward[1] + dz * forward[2]);
      const x = camera.centreX + (dx * right[0] + dy * right[1] + dz * right[2]) * nearer;
      const y = camera.centreY - (dx * up[0] + dy * up[1] + dz * up[2]) * nearer;
      if (x < fromX) fromX = x;
      if (x > toX) toX = x;
      if (y < fromY) fromY = y;
      if (y > toY) toY = y;
    }
  }
  return { fromX, toX, fromY, toY };
}

export interface Frame {
  readonly camera: Camera;
  readonly width: number;
  readonly height: number;
}

/**
 * Fits what is to be seen into a picture.
 * @param size width in units; height follows unless given; zoom fixes the scale [units per metre]
 */
export function fitCamera(
  camera: Camera,
  bounds: Bounds,
  size: { readonly width: number; readonly height?: number; readonly zoom?: number },
  edge = 8,
): Frame {
  const wide = bounds.toX - bounds.fromX;
  const high = bounds.toY - bounds.fromY;
  const byWidth = (size.width - 2 * edge) / wide;
  const byHeight = size.height === undefined ? byWidth : (size.height - 2 * edge) / high;
  const zoom = size.zoom ?? Math.min(byWidth, byHeight);
  const height = Math.ceil(size.height ?? high * zoom + 2 * edge);
  return {
    camera: {
      ...camera,
      zoom,
      centreX: size.width / 2 - ((bounds.fromX + bounds.toX) / 2) * zoom,
      centreY: height / 2 - ((bounds.fromY + bounds.toY) / 2) * zoom,
    },
    width: size.width,
    height,
  };
}
