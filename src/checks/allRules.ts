import type { Rule } from "./rule";
import { dateAsText } from "./rules/dateAsText";
import { dateTwoReadings } from "./rules/dateTwoReadings";

/** Every rule of the sheet check, in the order in which the documentation lists them. */
export const allRules: readonly Rule[] = [dateAsText, dateTwoReadings];
