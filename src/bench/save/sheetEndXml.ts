import { xmlEscape } from "../../sheet/xmlEscape";
import type { SavingSheet } from "./savingBook";

/** What stands at the end of a sheet that was added: its lists to choose from, and its tables by their relationships. */
export function sheetEndXml({ lists, tables }: Pick<SavingSheet, "lists" | "tables">): string {
  const rules = lists.map(({ reference, source, isStrict }) => {
    const formula = source.startsWith("=") ? source.slice(1) : `"${source.replace(/"/g, '""')}"`;
    const strict = isStrict ? ' showErrorMessage="1"' : "";
    return `<dataValidation type="list" allowBlank="1"${strict} sqref="${reference}"><formula1>${xmlEscape(formula)}</formula1></dataValidation>`;
  });
  const references = tables.map((_, index) => `<tablePart r:id="rId${index + 1}"/>`);
  return (
    (rules.length === 0 ? "" : `<dataValidations count="${rules.length}">${rules.join("")}</dataValidations>`) +
    (references.length === 0 ? "" : `<tableParts count="${references.length}">${references.join("")}</tableParts>`)
  );
}
