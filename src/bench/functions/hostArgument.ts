import type { Nullable } from "@univerjs/core";
import type { BaseValueObject } from "@univerjs/engine-formula";

/** How a blank cell reaches a function: as null on the web, as 0 on the desktop (reported). */
export type BlankHabit = null | 0;

/**
 * One value of the engine as Excel would hand it over: a number that is shown in a format of its own arrives as an
 * object, an error as an object with its code.
 */
export function hostArgument(held: Nullable<BaseValueObject>, blank: BlankHabit): unknown {
  if (!held || held.isNull()) return blank;
  if (held.isError()) return { type: "Error", basicType: "Error", basicValue: held.getValue() };
  const value = held.getValue();
  if (typeof value !== "number") return value;
  const pattern = held.getPattern();
  if (pattern === "" || pattern === "General") return value;
  return { type: "FormattedNumber", basicType: "Double", basicValue: value, numberFormat: pattern };
}
