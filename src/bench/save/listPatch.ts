import { xmlAttribute } from "../../sheet/xmlAttribute";
import { xmlText } from "../../sheet/xmlText";
import { elementsOf } from "./elementsOf";
import { insertBefore } from "./insertBefore";
import { listXml } from "./listXml";
import type { SavingList } from "./savingBook";
import { setXmlAttribute } from "./setXmlAttribute";

/**
 * What stands after the cells of a sheet, with these lists to choose from in place of those it had; the very same text
 * where they are the same. A list that the file knows keeps its messages; validations of other kinds stay as they are.
 */
export function listPatch(after: string, lists: readonly SavingList[], prefix: string): string {
  const held = elementsOf(after, "dataValidation");
  const isList = (element: string) => xmlAttribute(/^<[^>]*>/.exec(element)?.[0] ?? "", "type") === "list";
  // Lists of the newer kind stand in the extensions and are not written twice.
  const extended = new Set(
    elementsOf(after, "sqref").flatMap((element) =>
      xmlText(element.replace(/<[^>]*>/g, ""))
        .trim()
        .split(/\s+/),
    ),
  );
  const wanted = lists.filter(({ reference }) => !reference.split(" ").every((part) => extended.has(bare(part))));
  const plain = held.filter((element) => !element.startsWith("<x14:"));
  const before = plain.filter(isList).map((element) => [placesOf(element), sourceOf(element)].join("\n"));
  const now = wanted.map(({ reference, source }) => [places(reference), source].join("\n"));
  if (JSON.stringify(before.sort()) === JSON.stringify(now.sort())) return after;
  const written = wanted.map((list) => {
    const known = plain.find((element) => isList(element) && sourceOf(element) === list.source);
    return known === undefined
      ? listXml(list, prefix)
      : known.replace(/^<[^>]*>/, (tag) => setXmlAttribute(tag, "sqref", list.reference));
  });
  const all = [...plain.filter((element) => !isList(element)), ...written];
  const without = elementsOf(after, "dataValidations")
    .filter((element) => !element.startsWith("<x14:"))
    .reduce((rest, element) => rest.replace(element, ""), after);
  if (all.length === 0) return without;
  const name = `${prefix}dataValidations`;
  return insertBefore(without, "dataValidations", `<${name} count="${all.length}">${all.join("")}</${name}>`);
}

/** "A2:A2" is A2. */
function bare(reference: string): string {
  const [from, to] = reference.split(":");
  return from === to ? (from ?? "") : reference;
}

function places(references: string): string {
  return references.replace(/\$/g, "").trim().split(/\s+/).map(bare).sort().join(" ");
}

function placesOf(element: string): string {
  return places(xmlAttribute(/^<[^>]*>/.exec(element)?.[0] ?? "", "sqref") ?? "");
}

/** As the grid has it: "yes,no" for a list typed out, "=A1:A9" for cells. */
function sourceOf(element: string): string {
  const formula = xmlText(/<(?:\w+:)?formula1>([\s\S]*?)<\//.exec(element)?.[1] ?? "");
  const typed = /^"([\s\S]*)"$/.exec(formula)?.[1];
  return typed === undefined ? `=${formula}` : typed.replace(/""/g, '"');
}
