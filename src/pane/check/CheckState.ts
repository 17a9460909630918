import type { FindingFilter } from "./FindingFilter";

/** What the Check view alone remembers: what is shown, opened and about to be done. */
export interface CheckState {
  readonly filter: FindingFilter;
  /** Rule groups opened or closed by hand; the others follow the view's habit. */
  readonly isOpen: Readonly<Partial<Record<string, boolean>>>;
  /** How many findings of a group are shown, where more were asked for. */
  readonly shown: Readonly<Partial<Record<string, number>>>;
  /** The group whose fixes are shown before they are written. */
  readonly previewOf: string | null;
  /** The finding somebody is about to ignore, and the reason typed so far. */
  readonly ignoring: { readonly findingId: string; readonly reason: string } | null;
}
