import type { Problem } from "./problem";

/** Whether what was read, or computed for one cell, is a problem and not a value. */
export function isProblem(value: unknown): value is Problem {
  return typeof value === "object" && value !== null && "reason" in value && "facts" in value;
}
