import type { PositionId } from "../../practice/codes.ts";

/** Which way the body first goes, seen from the person; null where it goes straight down or stays. */
export type Towards = "strong" | "behind" | "behindStrong" | "ahead" | "foot" | null;

/** Which way each position is left, planned and in a hurry: read off the written steps of the position ("judgement"). */
export const WAYS_OUT: Readonly<Partial<Record<PositionId, { readonly planned: Towards; readonly hurry: Towards }>>> = {
  supine: { planned: "strong", hurry: "strong" },
  "hook-lying": { planned: "foot", hurry: "strong" },
  "side-lying-on-weak-side": { planned: "behind", hurry: "behind" },
  "side-lying-on-strong-side": { planned: "behind", hurry: null },
  prone: { planned: "strong", hurry: "strong" },
  "prone-on-elbows": { planned: null, hurry: null },
  "long-sitting": { planned: "behindStrong", hurry: "behind" },
  "side-sitting-on-strong-hip": { planned: null, hurry: "strong" },
  "short-sitting": { planned: "strong", hurry: "strong" },
  "forearms-on-table-sitting": { planned: "behind", hurry: "ahead" },
  "forearms-on-table-standing": { planned: "behind", hurry: "ahead" },
  "hands-and-knees": { planned: "behindStrong", hurry: "strong" },
  "tall-kneeling": { planned: "behindStrong", hurry: "strong" },
  "tall-kneeling-at-bench": { planned: "behindStrong", hurry: "ahead" },
  "half-kneeling-weak-forward": { planned: "ahead", hurry: "behindStrong" },
  "half-kneeling-strong-forward": { planned: "ahead", hurry: "behindStrong" },
  "standing-in-bars": { planned: "behind", hurry: "behind" },
  "walking-in-bars": { planned: "behind", hurry: "behind" },
  "wedge-prone": { planned: null, hurry: "strong" },
  "sitting-against-wall": { planned: "ahead", hurry: "strong" },
  "perch-sitting": { planned: null, hurry: "behind" },
  "bed-sitting": { planned: null, hurry: null },
  "side-sitting-on-weak-hip": { planned: "ahead", hurry: "strong" },
  "heel-sitting": { planned: "strong", hurry: "strong" },
  "kneeling-forearms-on-bench": { planned: "behindStrong", hurry: "ahead" },
  "on-floor-at-seat": { planned: "behindStrong", hurry: "behindStrong" },
  plantigrade: { planned: "behind", hurry: "ahead" },
  standing: { planned: "behind", hurry: "behind" },
  "stride-standing-weak-forward": { planned: "behind", hurry: "behind" },
  "stride-standing-strong-forward": { planned: "ahead", hurry: "behind" },
  "standing-at-wall": { planned: "behind", hurry: "behind" },
  "walking-with-device": { planned: "behind", hurry: "behind" },
  "standing-at-steps": { planned: "behind", hurry: "behind" },
};
