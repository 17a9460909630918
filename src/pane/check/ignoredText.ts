import type { IgnoredEntry } from "./IgnoredEntry";

/** The text the ignored findings are kept as; parseIgnored reads it back. */
export function ignoredText(entries: readonly IgnoredEntry[]): string {
  return JSON.stringify({ version: 1, ignored: entries });
}
