import type { DataValidation, Worksheet } from "@cj-tech-master/excelts";
import { DataValidationErrorStyle, DataValidationRenderMode, type ISheetDataValidationRule } from "@univerjs/core";
import type { Area } from "../../sheet/areaOfReference";
import { areasOfReference } from "./areasOfReference";

/** The sheet's validation lists; other kinds of validation stay in the file and do not stop typing here. */
export function validationResource(worksheet: Worksheet): ISheetDataValidationRule[] {
  const byRule = new Map<string, { rule: DataValidation; areas: Area[] }>();
  for (const [reference, rule] of Object.entries(worksheet.dataValidations.model)) {
    if (rule?.type !== "list") continue;
    const key = JSON.stringify(rule);
    const entry = byRule.get(key) ?? { rule, areas: [] as Area[] };
    entry.areas.push(...areasOfReference(reference.replace(/^range:/, "")));
    byRule.set(key, entry);
  }
  return [...byRule.values()].map(({ rule, areas }, index) => ({
    uid: `list-${worksheet.id}-${index}`,
    type: "list",
    formula1: listSource(String((rule as { formulae?: unknown[] }).formulae?.[0] ?? "")),
    ranges: areas,
    allowBlank: true,
    // A list that the file does not enforce helps and refuses nothing.
    showErrorMessage: rule.showErrorMessage === true,
    error: rule.error ?? "Choose one of the list.",
    errorStyle: rule.errorStyle === "warning" ? DataValidationErrorStyle.WARNING : DataValidationErrorStyle.STOP,
    renderMode: DataValidationRenderMode.ARROW,
  }));
}

/** "yes,no" in quotes is the list itself; anything else is a reference or a formula. */
function listSource(formula: string): string {
  const typed = /^"([\s\S]*)"$/.exec(formula)?.[1];
  return typed === undefined ? `=${formula}` : typed.replace(/""/g, '"');
}
