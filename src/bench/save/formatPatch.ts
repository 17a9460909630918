import { xmlAttribute } from "../../sheet/xmlAttribute";
import { xmlEscape } from "../../sheet/xmlEscape";
import { fileFormula } from "../file/fileFormula";
import { elementsOf } from "./elementsOf";
import { insertBefore } from "./insertBefore";
import type { FormatStyle, SavingFormat } from "./SavingFormat";

/** A format of the file, with the cells it is for. */
interface HeldRule {
  readonly element: string;
  readonly places: string;
  readonly priority: number;
}

/**
 * What stands after the cells of a sheet, with these conditional formats in place of those the grid was given (`opened`);
 * the very same text where they are the same. One that the file brought keeps all the file says of it and gets its cells
 * anew; those that the grid does not show stay as they are.
 *
 * A sheet with formats of the newer kind, which are told apart by ids in its extensions, is left as it is.
 */
export function formatPatch(
  after: string,
  opened: readonly SavingFormat[],
  now: readonly SavingFormat[],
  differential: (style: FormatStyle) => number,
  prefix: string,
): string {
  const placed = (formats: readonly SavingFormat[]) =>
    JSON.stringify(formats.map(({ id, reference }) => `${id} ${reference.split(" ").sort().join(" ")}`).sort());
  if (placed(opened) === placed(now) || after.includes("<x14:conditionalFormatting")) return after;
  const blocks = elementsOf(after, "conditionalFormatting");
  const rules = blocks.flatMap((block): HeldRule[] => {
    const places = xmlAttribute(/^<[^>]*>/.exec(block)?.[0] ?? "", "sqref") ?? "";
    return elementsOf(block, "cfRule").map((element) => {
      const priority = Number(xmlAttribute(/^<[^>]*>/.exec(element)?.[0] ?? "", "priority") ?? 0);
      return { element, places, priority };
    });
  });
  rules.sort((a, b) => a.priority - b.priority);
  const isShown = new Set(opened.map(({ id }) => numberOf(id)));
  let priority = Math.max(0, ...rules.map((rule) => rule.priority));
  const written = [
    ...rules.filter((_, index) => !isShown.has(index)).map(({ element, places }) => [places, element] as const),
    ...now.map((format) => {
      const known = opened.some(({ id }) => id === format.id) ? rules[numberOf(format.id)] : undefined;
      return [format.reference, known?.element ?? ruleXml(format, ++priority, differential, prefix)] as const;
    }),
  ];
  const name = `${prefix}conditionalFormatting`;
  const xml = written.map(([places, element]) => `<${name} sqref="${places}">${element}</${name}>`).join("");
  return insertBefore(
    blocks.reduce((rest, block) => rest.replace(block, ""), after),
    "conditionalFormatting",
    xml,
  );
}

function numberOf(id: string): number {
  return Number(/-(\d+)$/.exec(id)?.[1] ?? -1);
}

function ruleXml(
  { formula, style }: SavingFormat,
  priority: number,
  differential: (style: FormatStyle) => number,
  prefix: string,
): string {
  return `<${prefix}cfRule type="expression" dxfId="${differential(style)}" priority="${priority}"><${prefix}formula>${xmlEscape(fileFormula(formula))}</${prefix}formula></${prefix}cfRule>`;
}
