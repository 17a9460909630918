import { sayLook } from "./sayLook";
import type { Wait } from "./wait";

/** What a look waits for, in a few words: "call", "dresser, look 3", "Mina, look 2", "Mina arrives", "piece 12, look 3", "meal". */
export function sayWait({ kind, look, talent, piece }: Wait): string {
  const named = look === null ? "" : sayLook(look);
  switch (kind) {
    case "arrival":
      return `${talent ?? "talent"} arrives`;
    case "talent":
      return `${talent ?? "talent"}, ${named}`;
    case "piece":
      return `piece ${piece}, ${named}`;
    case "crossing":
      return `crossing from ${named}`;
    case "after":
      return named;
    case "chair":
    case "dresser":
    case "camera":
    case "order":
      return `${kind}, ${named}`;
    default:
      return kind;
  }
}
