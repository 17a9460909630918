import { isProblem } from "./isProblem";
import type { Problem } from "./problem";

/** The fields of a row that cannot be read, each with what keeps it from being read. */
export type UnreadFields = Readonly<Record<string, Problem>>;

/** Those of some fields of a row that cannot be read. */
export function unreadFields<Field extends string>(
  row: { readonly [F in Field]: unknown },
  fields: readonly Field[],
): UnreadFields {
  const unread: Record<string, Problem> = {};
  for (const field of fields) {
    const value = row[field];
    if (isProblem(value)) unread[field] = value;
  }
  return unread;
}
