import type { Side } from "../../quantity/sides.ts";
import type { SITE_TABLE } from "./sites.data.ts";

type Rows = typeof SITE_TABLE;
type PairedName = { [K in keyof Rows]: Rows[K]["paired"] extends true ? K : never }[keyof Rows];
type MiddleName = Exclude<keyof Rows, PairedName>;
/** A named place on the body for a helper's hand, thigh or shin. */
export type SiteId = MiddleName | `${PairedName}.${Side}`;
