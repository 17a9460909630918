import type { Severity } from "../../checks/finding";

/** Most serious first, with the words shown for one and for several. */
export const severities: readonly { readonly id: Severity; readonly one: string; readonly many: string }[] = [
  { id: "error", one: "error", many: "errors" },
  { id: "warning", one: "warning", many: "warnings" },
  { id: "note", one: "note", many: "notes" },
];
