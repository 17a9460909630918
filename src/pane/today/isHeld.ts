import type { CurrencyValue } from "./CurrencyValue";

/** Whether anything is out in that currency on the day, readable or not. */
export function isHeld({ piecesHeld, valueOut, unread }: CurrencyValue): boolean {
  return piecesHeld > 0 || valueOut > 0 || unread.length > 0;
}
