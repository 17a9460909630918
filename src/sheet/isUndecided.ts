// Common practice, no source: what people write where they do not know yet, in the five languages of the headings.
const UNDECIDED = new Set(
  (
    "tbc|tba|tbd|tbn|to be confirmed|to be advised|to confirm|to follow|pending|open|waiting|asked|n/a|na|none|unknown|not yet|" +
    "à confirmer|a confirmer|en attente|por confirmar|pendiente|da confermare|in attesa|offen|folgt|noch offen"
  ).split("|"),
);

/** Whether a text says that something is not known yet: "tbc", "?", "-", "n/a". */
export function isUndecided(text: string): boolean {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/\s+/g, " ")
    .replace(/[.!?]+$/, "");
  return plain === "" || /^[-–—?.…/]+$/.test(plain) || UNDECIDED.has(plain);
}
