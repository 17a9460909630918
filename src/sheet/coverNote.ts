import type { Outcome } from "../domain/outcome";
import type { CoverLimit } from "../domain/value/coverLimit";
import type { NotedCell } from "./notedCell";

/** A cell of the workbook that says how much is covered. */
export interface CoverNote extends NotedCell {
  /** Whether it covers all pieces together or any one of them. */
  readonly covers: "all" | "one";
  /** The day it speaks of; null where it speaks of every day. */
  readonly day: number | null;
  /** The amount; a problem where it cannot be read as one. */
  readonly limit: Outcome<CoverLimit>;
}
