import { xmlText } from "./xmlText";

/** One attribute of a start tag, or undefined where it has none. */
export function xmlAttribute(tag: string, name: string): string | undefined {
  const found = new RegExp(`\\s${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag);
  return found === null ? undefined : xmlText(found[1] ?? found[2] ?? "");
}
