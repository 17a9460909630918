/** Splits a text at a separator where it stands outside quotes and brackets. */
export function splitOutside(text: string, separator: string): string[] {
  const parts = [""];
  let depth = 0;
  let quoted = false;
  for (const character of text) {
    if (character === '"') quoted = !quoted;
    if (!quoted && "({".includes(character)) depth++;
    if (!quoted && ")}".includes(character)) depth--;
    if (character === separator && depth === 0 && !quoted) parts.push("");
    else parts[parts.length - 1] += character;
  }
  return parts;
}
