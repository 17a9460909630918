import { xmlEscape } from "../../sheet/xmlEscape";
import type { SavingFilter, SavingFilterColumn } from "./SavingFilter";

/** A filter as a sheet's or a table's part keeps it (ISO/IEC 29500-1 18.3.2). */
export function filterXml({ reference, columns }: SavingFilter, prefix: string): string {
  const name = `${prefix}autoFilter`;
  if (columns.length === 0) return `<${name} ref="${reference}"/>`;
  return `<${name} ref="${reference}">${columns.map((column) => columnXml(column, prefix)).join("")}</${name}>`;
}

function columnXml({ offset, values, isBlankShown, tests, isEveryTest }: SavingFilterColumn, prefix: string): string {
  const name = `${prefix}filterColumn`;
  const inner =
    values === null
      ? `<${prefix}customFilters${isEveryTest ? ' and="1"' : ""}>${tests
          .map(({ operator, value }) => {
            const said = operator === "equal" ? "" : ` operator="${operator}"`;
            return `<${prefix}customFilter${said} val="${xmlEscape(value)}"/>`;
          })
          .join("")}</${prefix}customFilters>`
      : `<${prefix}filters${isBlankShown ? ' blank="1"' : ""}>${values
          .map((value) => `<${prefix}filter val="${xmlEscape(value)}"/>`)
          .join("")}</${prefix}filters>`;
  return `<${name} colId="${offset}">${inner}</${name}>`;
}
