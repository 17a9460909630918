import { BooleanNumber, type IStyleBase } from "@univerjs/core";
import type { Area } from "../../sheet/areaOfReference";
import { lookOfStyle } from "./lookOfStyle";
import { referenceOf } from "./referenceOf";
import type { SavingFormat } from "./SavingFormat";

/** A conditional format as the grid keeps it. */
export interface GridFormat {
  readonly cfId: string;
  readonly ranges: readonly Area[];
  readonly rule: {
    readonly type: string;
    readonly subType?: string;
    readonly value?: unknown;
    readonly style?: IStyleBase;
  };
}

/** The formats of a sheet that follow from a formula, which are all that the bench shows. */
export function formatsOf(rules: readonly GridFormat[]): SavingFormat[] {
  return rules.flatMap(({ cfId, ranges, rule }) => {
    if (rule.subType !== "formula" || typeof rule.value !== "string") return [];
    const { ink, background } = lookOfStyle(rule.style);
    const style = { ink, background, bold: rule.style?.bl === BooleanNumber.TRUE };
    return [{ id: cfId, reference: ranges.map(referenceOf).join(" "), formula: rule.value, style }];
  });
}
