/** A look as a sentence names it: "look 7", and what is called "Look 7" already stays so. */
export function sayLook(label: string | number): string {
  return /^look\b/i.test(String(label)) ? String(label) : `look ${label}`;
}
