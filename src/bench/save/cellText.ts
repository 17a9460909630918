import { xmlEscape } from "../../sheet/xmlEscape";

/**
 * Text of a cell as the file keeps it (ISO/IEC 29500-1 22.9.2.19): a character that XML cannot hold is written
 * _x0007_, and text that looks like that is protected.
 */
export function cellText(text: string): string {
  const guarded = text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_");
  return xmlEscape(
    guarded.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, (character) => {
      return `_x${character.charCodeAt(0).toString(16).padStart(4, "0").toUpperCase()}_`;
    }),
  );
}
