import type { ColumnChoice } from "./columnChoice";

/** A heading that the columns argument cannot name, since its parts end there. */
const PART_END = /[;\n]|,.*=/;

/**
 * Choices as the columns argument of a function takes them: "value=Ins. amt; lender=From".
 *
 * A heading with a ; or a line break, or a = behind a comma, cannot be said there; such choices are left out and come back in `unsaid`.
 */
export function columnsText(choices: readonly ColumnChoice[]): {
  readonly text: string;
  readonly unsaid: readonly ColumnChoice[];
} {
  const canSay = ({ heading }: ColumnChoice): boolean => !PART_END.test(heading ?? "");
  const parts = choices.filter(canSay).map(({ field, heading }) => `${field}=${(heading ?? "").trim()}`);
  return { text: parts.join("; "), unsaid: choices.filter((choice) => !canSay(choice)) };
}
