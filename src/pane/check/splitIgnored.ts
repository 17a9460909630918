import type { IgnoredEntry } from "./IgnoredEntry";
import type { OpenFinding } from "./OpenFinding";

/** What is shown as found, and what is not since it was ignored. */
export interface SplitFindings {
  readonly open: readonly OpenFinding[];
  /** Every kept entry, with how many findings it hides now: none when the cell has changed since or was mended. */
  readonly ignored: readonly { readonly entry: IgnoredEntry; readonly hides: readonly OpenFinding[] }[];
}

/** Parts the findings that were ignored from those that were not. */
export function splitIgnored(findings: readonly OpenFinding[], entries: readonly IgnoredEntry[]): SplitFindings {
  const hiddenBy = new Map<string, OpenFinding[]>(entries.map((entry) => [entry.key, []]));
  const open = findings.filter((one) => {
    const hidden = hiddenBy.get(one.key);
    hidden?.push(one);
    return hidden === undefined;
  });
  return { open, ignored: entries.map((entry) => ({ entry, hides: hiddenBy.get(entry.key) ?? [] })) };
}
