import { xmlEscape } from "../../sheet/xmlEscape";
import { xmlText } from "../../sheet/xmlText";

/** The elements that hold formulas outside of cells: names, lists, formats, table columns, charts. */
const ELEMENTS =
  /<((?:\w+:)?(?:definedName|formula|formula1|formula2|calculatedColumnFormula|totalsRowFormula)|(?:c|xm|cx):f)(\s[^>]*)?>([^<]*)<\/\1>/g;

/** A part with every formula outside of its cells replaced by what `map` makes of it; unchanged ones stay byte for byte. */
export function mapFormulaElements(xml: string, map: (formula: string) => string): string {
  return xml.replace(ELEMENTS, (whole, name: string, attributes: string | undefined, held: string) => {
    const formula = xmlText(held);
    const mapped = map(formula);
    return mapped === formula ? whole : `<${name}${attributes ?? ""}>${xmlEscape(mapped)}</${name}>`;
  });
}
