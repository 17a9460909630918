import { keptNamespace } from "./keptNamespace";
import { xmlEscape } from "./xmlEscape";

/**
 * The content of the custom XML part that keeps texts in a workbook, by key; the same in every host, so that a file goes
 * from one to the other. White space is written as references, which no XML processor evens out.
 */
export function keptXml(kept: ReadonlyMap<string, string>): string {
  const whole = (text: string) => xmlEscape(text).replace(/[\t\n\r]/g, (space) => `&#${space.charCodeAt(0)};`);
  const texts = [...kept].map(([key, text]) => `<text key="${whole(key)}">${whole(text)}</text>`).join("");
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<kept xmlns="${keptNamespace}">${texts}</kept>`;
}
