import type { GradeCode } from "../findings.ts";

const ORDER: readonly GradeCode[] = ["0", "1", "1+", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"];

/** A grade's place in the order of grades, 0 to 13. */
export const gradeRank = (grade: GradeCode): number => ORDER.indexOf(grade);
