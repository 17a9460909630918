import { nameKey } from "../sheet/nameKey";

// "Look 3", "L3", "no. 03", "tenue 3" and 3 are one look.
const LOOK_WORDS = /^(?:look|outfit|tenue|silhouette|conjunto|atuendo|completo|outfits|l|n|no|nr|num)(?=\d)/;

/** The key that ways of writing one look's number share: a word for look and leading noughts are left off. */
export function lookKey(look: string): string {
  return nameKey(look).replace(LOOK_WORDS, "").replace(/^0+(?=\d)/, "");
}
