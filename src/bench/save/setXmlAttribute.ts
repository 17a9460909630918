import { xmlEscape } from "../../sheet/xmlEscape";

/** A start tag with one attribute set, or taken away where the value is null; the others stay as they are. */
export function setXmlAttribute(tag: string, name: string, value: string | null): string {
  const found = new RegExp(`\\s${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`).exec(tag);
  const written = value === null ? "" : ` ${name}="${xmlEscape(value)}"`;
  if (found !== null) return tag.slice(0, found.index) + written + tag.slice(found.index + found[0].length);
  return tag.replace(/\s*(\/?>)$/, `${written}$1`);
}
