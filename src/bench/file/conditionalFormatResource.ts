import type { Worksheet } from "@cj-tech-master/excelts";
import { BooleanNumber, type IStyleBase } from "@univerjs/core";
import { areasOfReference } from "./areasOfReference";
import { engineFormula } from "./engineFormula";

interface FileRule {
  readonly type: string;
  readonly operator?: string;
  readonly text?: string;
  readonly formulae?: readonly unknown[];
  readonly priority?: number;
  readonly style?: {
    readonly font?: { readonly bold?: boolean; readonly color?: { readonly argb?: string } };
    readonly fill?: { readonly bgColor?: { readonly argb?: string }; readonly fgColor?: { readonly argb?: string } };
  };
}

const SIGN: Readonly<Record<string, string>> = {
  equal: "=",
  notEqual: "<>",
  greaterThan: ">",
  greaterThanOrEqual: ">=",
  lessThan: "<",
  lessThanOrEqual: "<=",
};

/** The sheet's conditional formats that can be said as a formula; colour scales, bars and icons stay in the file. */
export function conditionalFormatResource(worksheet: Worksheet): unknown[] {
  const rules = worksheet.conditionalFormattings.flatMap(({ ref, rules: held }) =>
    (held as readonly FileRule[]).map((rule) => ({ ref, rule })),
  );
  rules.sort((a, b) => (a.rule.priority ?? 0) - (b.rule.priority ?? 0));
  return rules.flatMap(({ ref, rule }, index) => {
    const ranges = areasOfReference(ref);
    const formula = ruleFormula(rule, ref.split(/[\s:]/)[0]?.replace(/\$/g, "") ?? "A1");
    if (formula === null || ranges.length === 0) return [];
    return [
      {
        cfId: `format-${worksheet.id}-${index}`,
        ranges,
        stopIfTrue: false,
        rule: { type: "highlightCell", subType: "formula", value: engineFormula(formula), style: ruleStyle(rule) },
      },
    ];
  });
}

/** The rule as a formula for the first cell of its range. */
function ruleFormula({ type, operator = "", formulae = [], text = "" }: FileRule, first: string): string | null {
  const [low, high] = formulae;
  if (type === "expression") return String(low);
  if (type === "containsText") return low === undefined ? `ISNUMBER(SEARCH("${text}",${first}))` : String(low);
  if (type !== "cellIs") return null;
  if (operator === "between") return `AND(${first}>=${low},${first}<=${high})`;
  if (operator === "notBetween") return `OR(${first}<${low},${first}>${high})`;
  const sign = SIGN[operator];
  return sign === undefined ? null : `${first}${sign}${low}`;
}

function ruleStyle({ style }: FileRule): IStyleBase {
  const background = style?.fill?.bgColor?.argb ?? style?.fill?.fgColor?.argb;
  const ink = style?.font?.color?.argb;
  return {
    ...(background !== undefined && { bg: { rgb: `#${background.slice(-6)}` } }),
    ...(ink !== undefined && { cl: { rgb: `#${ink.slice(-6)}` } }),
    ...(style?.font?.bold === true && { bl: BooleanNumber.TRUE }),
  };
}
