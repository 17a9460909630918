import type { Problem } from "./problem";

/** What one cell of a row was read as: its value, null where blank, or the problem that keeps it from being read. */
export type FieldValue<T> = T | null | Problem;
