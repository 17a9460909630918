import changeMinutesData from "../../shared/change-minutes.json";
import { nameKey } from "./nameKey";
import { readKind } from "./readKind";

const DONE: ReadonlyMap<string, string> = new Map(
  Object.entries(changeMinutesData.doneWords).flatMap(([kind, words]) =>
    words.split("|").map((word) => [nameKey(word), kind] as const),
  ),
);

/** The kind of garment a text names, "hair" or "make-up" where it names what is done, or the text's own key where neither is known. */
export function garmentKey(text: string): { readonly kind: string; readonly known: boolean } {
  const key = nameKey(text);
  const kind = DONE.get(key) ?? readKind(text);
  // The space keeps a kind of the sheet's own apart from the known ones.
  return kind === null ? { kind: ` ${key}`, known: false } : { kind, known: true };
}
