import {
  ArrayValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { createErrorSentences } from "../../../src/bench/functions/createErrorSentences";
import { engineFunction } from "../../../src/bench/functions/engineFunction";
import type { ParameterMetadata } from "../../../src/bench/functions/FunctionMetadata";
import type { BlankHabit } from "../../../src/bench/functions/hostArgument";
import { installFunctionHost } from "../../../src/bench/functions/installFunctionHost";

beforeAll(installFunctionHost);

const PARAMETERS: readonly ParameterMetadata[] = [
  { name: "rows", dimensionality: "matrix" },
  { name: "asOf" },
  { name: "columns", optional: true },
];

function call(run: (...args: unknown[]) => unknown, given: BaseValueObject[], blank: BlankHabit = null) {
  const sentences = createErrorSentences();
  const Function = engineFunction({ metadata: { parameters: PARAMETERS }, run, blank: () => blank, sentences });
  const made = new Function("TACK.TRY");
  made.setRefInfo("book", "sheet", 4, 2);
  return { result: made.calculate(...given), sentences, made };
}

const range = (...rows: (BaseValueObject | null)[][]) =>
  ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: "book",
    sheetId: "sheet",
    row: 0,
    column: 0,
  });

test("a range arrives as rows, a formatted number with its format, an error with its code, what is left out as null", () => {
  const seen: unknown[] = [];
  call(
    (...args) => void seen.push(...args),
    [
      range(
        [StringValueObject.create("Piece"), NumberValueObject.create(46086, "yyyy-mm-dd")],
        [null, ErrorValueObject.create(ErrorType.NA)],
      ),
      NumberValueObject.create(46086),
    ],
  );
  expect(seen).toEqual([
    [
      ["Piece", { type: "FormattedNumber", basicType: "Double", basicValue: 46086, numberFormat: "yyyy-mm-dd" }],
      [null, { type: "Error", basicType: "Error", basicValue: "#N/A" }],
    ],
    46086,
    null,
  ]);
});

test("a blank cell arrives as null or as 0, by the host's habit; an argument left out is null either way", () => {
  const seen: unknown[] = [];
  const given = [range([null]), range([null])];
  call((...args) => void seen.push(args), given, null);
  call((...args) => void seen.push(args), given, 0);
  call((...args) => void seen.push(args), [range([null]), NullValueObject.create()], 0);
  expect(seen).toEqual([
    [[[null]], null, null],
    [[[0]], 0, null],
    [[[0]], null, null],
  ]);
});

test("the host's error keeps its code in the cell and its sentence beside it", () => {
  const { result, sentences } = call(() => {
    throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "There is nothing to compute from.");
  }, [range([null])]);
  expect((result as BaseValueObject).getValue()).toBe("#N/A");
  expect(sentences.at({ sheetId: "sheet", row: 4, column: 2 })).toBe("There is nothing to compute from.");
});

test("an error inside a table stands in its own cell, with its sentence there", () => {
  const error = new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, "Row 2: no value.");
  const { result, sentences } = call(
    () => [
      ["Lender", "Value"],
      ["Wren Archive", error],
    ],
    [range([null])],
  );
  const table = result as ArrayValueObject;
  expect(table.get(0, 1)?.getValue()).toBe("Value");
  expect(table.get(1, 1)?.getValue()).toBe("#VALUE!");
  expect(sentences.at({ sheetId: "sheet", row: 5, column: 3 })).toBe("Row 2: no value.");
  expect(sentences.at({ sheetId: "sheet", row: 5, column: 2 })).toBeUndefined();
});

test("what a formula said before is forgotten when it says nothing now", () => {
  let bad = true;
  const { sentences, made } = call(() => {
    if (bad) throw new Error("first");
    return 1;
  }, [range([null])]);
  bad = false;
  made.calculate(range([null]));
  expect(sentences.at({ sheetId: "sheet", row: 4, column: 2 })).toBeUndefined();
});

test("a number with a format goes to the cell with that format, and a null shows 0 as in Excel", () => {
  const { result } = call(() => ({ type: "Double", basicValue: 46086, numberFormat: "yyyy-mm-dd" }), [range([null])]);
  expect([(result as BaseValueObject).getValue(), (result as BaseValueObject).getPattern()]).toEqual([
    46086,
    "yyyy-mm-dd",
  ]);
  expect((call(() => null, [range([null])]).result as BaseValueObject).getValue()).toBe(0);
});

test("it may be called with what must be given, and with no more than there are parameters", () => {
  const { made } = call(() => 1, [range([null])]);
  expect([made.minParams, made.maxParams]).toEqual([2, 3]);
});
