const REFERENCE: Readonly<Record<string, string>> = { "<": "&lt;", ">": "&gt;", "&": "&amp;", '"': "&quot;" };

/** Text for an element or an attribute of XML. */
export function xmlEscape(text: string): string {
  return text.replace(/[<>&"]/g, (character) => REFERENCE[character] ?? character);
}
