import {
  ArrayValueObject,
  BaseFunction,
  ErrorType,
  ErrorValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import type { ErrorSentences, FormulaPlace } from "./createErrorSentences";
import { engineValue } from "./engineValue";
import type { FunctionMetadata, ParameterMetadata } from "./FunctionMetadata";
import { hostArgument, type BlankHabit } from "./hostArgument";

export interface EngineFunctionParts {
  readonly metadata: Pick<FunctionMetadata, "parameters">;
  readonly run: (...args: unknown[]) => unknown;
  readonly blank: () => BlankHabit;
  readonly sentences: ErrorSentences | null;
}

/** A class of the grid's engine that runs one worksheet function as Excel runs it. */
export function engineFunction(parts: EngineFunctionParts): typeof BaseFunction {
  const { parameters } = parts.metadata;
  return class extends BaseFunction {
    override minParams = parameters.filter((parameter) => parameter.optional !== true).length;
    override maxParams = parameters.some((parameter) => parameter.repeating === true) ? 255 : parameters.length;

    override calculate(...given: BaseValueObject[]) {
      const place = { sheetId: this.subUnitId ?? "", row: this.row, column: this.column };
      parts.sentences?.forget(place);
      try {
        const result = parts.run(...hostArguments(given, parameters, parts.blank()));
        return Array.isArray(result) ? this.table(result, place) : this.one(result, place);
      } catch (thrown) {
        const error = thrown instanceof Error ? thrown : new Error(String(thrown));
        return this.one(error, place);
      }
    }

    private one(result: unknown, place: FormulaPlace) {
      if (result instanceof Error) parts.sentences?.keep(place, 0, 0, result.message);
      return engineValue(result);
    }

    private table(result: readonly (readonly unknown[])[], place: FormulaPlace) {
      const columnCount = result[0]?.length ?? 0;
      if (columnCount === 0) return ErrorValueObject.create(ErrorType.CALC);
      const values = result.map((row, rowOffset) =>
        row.map((cell, columnOffset) => {
          if (cell instanceof Error) parts.sentences?.keep(place, rowOffset, columnOffset, cell.message);
          return engineValue(cell);
        }),
      );
      return ArrayValueObject.create({
        calculateValueList: values,
        rowCount: values.length,
        columnCount,
        unitId: this.unitId ?? "",
        sheetId: this.subUnitId ?? "",
        row: -1,
        column: -1,
      });
    }
  };
}

/** The arguments in the shapes the metadata declares; an omitted one is null, as the host sends it. */
function hostArguments(
  given: readonly BaseValueObject[],
  parameters: readonly ParameterMetadata[],
  blank: BlankHabit,
): unknown[] {
  const count = Math.max(given.length, parameters.length);
  return Array.from({ length: count }, (_, index) => {
    const held = given[index];
    if (held === undefined) return null;
    const parameter = parameters[Math.min(index, parameters.length - 1)];
    return parameter?.dimensionality === "matrix" ? matrix(held, blank) : scalar(held, blank);
  });
}

function matrix(held: BaseValueObject, blank: BlankHabit): unknown {
  if (!held.isArray()) return held.isNull() ? null : [[hostArgument(held, blank)]];
  const cells = held as ArrayValueObject;
  const rows: unknown[][] = [];
  for (let row = 0; row < cells.getRowCount(); row++) {
    const line: unknown[] = [];
    for (let column = 0; column < cells.getColumnCount(); column++)
      line.push(hostArgument(cells.get(row, column), blank));
    rows.push(line);
  }
  return rows;
}

function scalar(held: BaseValueObject, blank: BlankHabit): unknown {
  if (!held.isArray()) return held.isNull() ? null : hostArgument(held, blank);
  const cells = held as ArrayValueObject;
  if (cells.getRowCount() === 1 && cells.getColumnCount() === 1) return hostArgument(cells.get(0, 0), blank);
  // The host hands a range given for a single value over as an error.
  return { type: "Error", basicType: "Error", basicValue: ErrorType.VALUE };
}
