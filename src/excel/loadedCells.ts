import type { Cell } from "../sheet/cell";

/** The properties to load of a range before `loadedCells` can read it. All are of ExcelApi 1.1. */
export const CELL_PROPERTIES = "values,valueTypes,formulas";

/** The cells of a range whose CELL_PROPERTIES were loaded: blanks as null, errors as errors, formulas apart from values. */
export function loadedCells(range: Pick<Excel.Range, "values" | "valueTypes" | "formulas">): {
  readonly values: Cell[][];
  readonly formulas: (string | null)[][];
} {
  const raw = range.values as unknown[][];
  const types = range.valueTypes;
  const values = raw.map((row, r) =>
    row.map((value, c): Cell => {
      if (types[r]?.[c] === "Error") return { error: String(value) };
      // A formula may give an empty text; like an untouched cell it reads "".
      return value === "" || value === null ? null : (value as Cell);
    }),
  );
  const formulas = (range.formulas as unknown[][]).map((row, r) =>
    row.map((formula, c) => {
      // Text that begins with = stands in both alike; a formula never equals its own result.
      const isFormula = typeof formula === "string" && formula.startsWith("=") && formula !== raw[r]?.[c];
      return isFormula ? formula : null;
    }),
  );
  return { values, formulas };
}
