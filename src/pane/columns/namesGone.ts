import type { KeptChoices } from "../../sheet/keptChoices";

/** The sheets that choices are kept for and that the workbook no longer has under that name. */
export function namesGone({ columns, kinds }: KeptChoices, sheetNames: readonly string[]): readonly string[] {
  const kept = new Set([...Object.keys(columns), ...Object.keys(kinds)]);
  return [...kept].filter((name) => !sheetNames.includes(name));
}
