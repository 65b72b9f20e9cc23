import { picturesHold } from "./support/pictures-hold.ts";

picturesHold(1);
