import type { Outcome } from "./outcome";

/** The outcome that carries a value. */
export function succeed<T>(value: T): Outcome<T> {
  return { ok: true, value };
}
