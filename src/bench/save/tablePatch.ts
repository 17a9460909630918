import { xmlAttribute } from "../../sheet/xmlAttribute";
import { xmlEscape } from "../../sheet/xmlEscape";
import { elementsOf } from "./elementsOf";
import { filterXml } from "./filterXml";
import type { SavingFilterColumn } from "./SavingFilter";
import type { SavingTable } from "./savingBook";
import { setXmlAttribute } from "./setXmlAttribute";

/**
 * A table's part with the area, the headings and the filters it has now. Excel repairs a file whose heading cells and columns
 * disagree, so the columns follow the cells: one that keeps its name keeps all it had.
 */
export function tablePatch(
  xml: string,
  { reference, headings, filters }: SavingTable,
  filteredBefore: readonly SavingFilterColumn[],
): string {
  const columns = xml.match(/<tableColumn\b[^>]*?(?:\/>|>[\s\S]*?<\/tableColumn>)/g) ?? [];
  const nameOf = (column: string) => fileName(xmlAttribute(/^<[^>]*>/.exec(column)?.[0] ?? "", "name") ?? "");
  const same =
    columns.length === headings.length && columns.every((column, index) => nameOf(column) === headings[index]);
  const renamed = columns.length === headings.length ? columns : null;
  let nextId = Math.max(0, ...columns.map((column) => Number(xmlAttribute(column, "id") ?? 0)));
  const kept = headings.map((heading, index) => {
    const written = heading.replace(/\r?\n/g, "_x000a_");
    const held = columns.find((column) => nameOf(column) === heading) ?? renamed?.[index];
    if (held === undefined) return `<tableColumn id="${++nextId}" name="${xmlEscape(written)}"/>`;
    return held.replace(/^<[^>]*>/, (tag) => setXmlAttribute(tag, "name", written));
  });
  const moved = filterTable(moveTable(xml, reference), filters, filteredBefore);
  if (same) return moved;
  return moved.replace(/<tableColumns\b[^>]*>[\s\S]*<\/tableColumns>/, () => {
    return `<tableColumns count="${kept.length}">${kept.join("")}</tableColumns>`;
  });
}

/** Another filter than the one the grid was given takes its place; one that the grid does not know stays while nobody sets another. */
function filterTable(
  xml: string,
  filters: readonly SavingFilterColumn[],
  before: readonly SavingFilterColumn[],
): string {
  if (JSON.stringify(filters) === JSON.stringify(before)) return xml;
  const held = elementsOf(xml, "autoFilter")[0];
  if (held === undefined) return xml;
  const table = /<table\b[^>]*>/.exec(xml)?.[0] ?? "";
  const totals = Number(xmlAttribute(table, "totalsRowCount") ?? 0);
  const reference = withoutTotals(xmlAttribute(table, "ref") ?? "", totals);
  return xml.replace(held, () => filterXml({ reference, columns: filters }, ""));
}

function moveTable(xml: string, reference: string): string {
  const table = /<table\b[^>]*>/.exec(xml)?.[0] ?? "";
  if (xmlAttribute(table, "ref") === reference) return xml;
  const totals = Number(xmlAttribute(table, "totalsRowCount") ?? 0);
  return xml
    .replace(table, setXmlAttribute(table, "ref", reference))
    .replace(/<autoFilter\b[^>]*>/, (tag) => setXmlAttribute(tag, "ref", withoutTotals(reference, totals)));
}

function fileName(name: string): string {
  return name.replace(/_x000[aA]_/g, "\n");
}

function withoutTotals(reference: string, totals: number): string {
  return reference.replace(/\d+$/, (last) => String(Number(last) - totals));
}
