import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";

/** Text without the spaces around it; a number or truth value as it is written. Blank is null. Problems: those of readScalar. */
export function readText(raw: unknown, argument: string): Outcome<string | null> {
  if (typeof raw === "number") return succeed(String(raw));
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (typeof value === "boolean") return succeed(value ? "TRUE" : "FALSE");
  return succeed(value === null ? null : String(value));
}
