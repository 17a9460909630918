import type { Cell } from "./cell";

/** Whether two cells hold the same; the number 1, the text "1" and TRUE differ. */
export function sameCell(one: Cell, other: Cell): boolean {
  if (typeof one === "object" && one !== null && typeof other === "object" && other !== null) {
    return one.error === other.error;
  }
  return one === other;
}
