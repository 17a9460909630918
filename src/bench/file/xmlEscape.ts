const REFERENCE: Readonly<Record<string, string>> = { "<": "&lt;", ">": "&gt;", "&": "&amp;", '"': "&quot;" };

/** Text for XML; a character that XML 1.0 cannot hold is written in the file format's own way, as _x0007_. */
export function xmlEscape(text: string): string {
  return text
    .replace(/[<>&"]/g, (character) => REFERENCE[character] ?? character)
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, (character) => {
      return `_x${character.charCodeAt(0).toString(16).padStart(4, "0").toUpperCase()}_`;
    });
}
