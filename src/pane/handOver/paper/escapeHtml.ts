import { wellFormed } from "../files/wellFormed";

const ENTITIES: Readonly<Partial<Record<string, string>>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Any text so that it stands as itself in an element and in a quoted attribute of HTML. */
export function escapeHtml(text: string): string {
  const plain = wellFormed(text);
  if (!/[&<>"']/.test(plain)) return plain;
  return plain.replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? "");
}
