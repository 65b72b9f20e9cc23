/** From where on a finding counts as the condition. Proposals of this project, for the site to change. */
export const IMPLIED_FROM = {
  /** Pain of 10. */
  painAtRest: 1,
  painOnMovement: 4,
  /** Fingers that fit under the point of the shoulder. */
  gapFingers: 1,
  /** Grades of the modified Ashworth scale that count as strong spasms. */
  strongTone: ["3", "4"],
} as const;
