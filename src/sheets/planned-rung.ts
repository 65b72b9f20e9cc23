/** One item of a plan as the papers need it; an item of the plan's answer has this form. */
export interface PlannedRung {
  readonly activity: string;
  readonly rung: string;
  readonly dose: {
    readonly sets: number;
    readonly repetitions?: number | undefined;
    readonly holdSeconds?: number | undefined;
    readonly restSeconds: number;
  };
  readonly help: { readonly words: string } | null;
  /** Null where nobody can fall. */
  readonly guard: { readonly helperPose: string; readonly because: string } | null;
}

/** A drawing for paper (black on white, no colours from a page) and the words for it. */
export interface Picture {
  readonly svg: string;
  readonly alt: string;
}

export const rungKey = ({ activity, rung }: { readonly activity: string; readonly rung: string }): string =>
  `${activity}/${rung}`;
