import { xmlAttribute } from "./xmlAttribute";
import { xmlText } from "./xmlText";

const TEXT = /<(?:\w+:)?text\b((?:"[^"]*"|'[^']*'|[^"'>])*?)(?:\/>|>([^<]*)<\/)/g;

/** The texts in a custom XML part that keeps them, by key; also as a host wrote the part anew. See keptXml. */
export function readKeptXml(xml: string): Map<string, string> {
  return new Map(
    [...xml.matchAll(TEXT)].map(([, attributes = "", text = ""]) => [
      xmlAttribute(attributes, "key") ?? "",
      xmlText(text),
    ]),
  );
}
