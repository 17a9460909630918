import type { Look } from "./lookOfStyle";

/** Whether two cells look the same, as far as the bench shows and saves it. */
export function sameLook(one: Look, other: Look): boolean {
  return (
    one === other ||
    (one.pattern === other.pattern &&
      one.bold === other.bold &&
      one.italic === other.italic &&
      one.ink === other.ink &&
      one.background === other.background &&
      one.wrap === other.wrap &&
      one.across === other.across)
  );
}
