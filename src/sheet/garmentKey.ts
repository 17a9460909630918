import { nameKey } from "./nameKey";
import { readKind } from "./readKind";

/** The kind of garment a text names, or the text's own key where the kind is not one of those known. */
export function garmentKey(text: string): { readonly kind: string; readonly known: boolean } {
  const kind = readKind(text);
  // The space keeps a kind of the sheet's own apart from the known ones.
  return kind === null ? { kind: ` ${nameKey(text)}`, known: false } : { kind, known: true };
}
