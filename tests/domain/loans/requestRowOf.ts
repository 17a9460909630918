import type { RequestRow } from "../../../src/domain/loans/requestRow";

/** A request with every field blank but those given. */
export function requestRowOf(fields: Partial<RequestRow>): RequestRow {
  return { row: 1, asked: null, neededBy: null, answer: null, answered: null, collected: null, ...fields };
}
