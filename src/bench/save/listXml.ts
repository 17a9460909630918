import { xmlEscape } from "../../sheet/xmlEscape";
import type { SavingList } from "./savingBook";

/** One list to choose from as a sheet's part keeps it (ISO/IEC 29500-1 18.3.1.32). */
export function listXml({ reference, source, isStrict }: SavingList, prefix: string): string {
  const formula = source.startsWith("=") ? source.slice(1) : `"${source.replace(/"/g, '""')}"`;
  const strict = isStrict ? ' showErrorMessage="1"' : "";
  return `<${prefix}dataValidation type="list" allowBlank="1"${strict} sqref="${reference}"><${prefix}formula1>${xmlEscape(formula)}</${prefix}formula1></${prefix}dataValidation>`;
}
