import { announceNumbers } from "../../../src/excel/shell/announceNumbers";
import { toHostCell } from "../../../src/functions/toHostCell";

/** A host that knows the given requirement sets. */
function host(...sets: string[]): { asked: string[] } {
  const asked: string[] = [];
  const isSetSupported = (set: string, version: string): boolean => {
    asked.push(`${set} ${version}`);
    return sets.includes(`${set} ${version}`);
  };
  Object.assign(globalThis, { Office: { context: { requirements: { isSetSupported } } } });
  return { asked };
}

afterEach(() => {
  Reflect.deleteProperty(globalThis, "Office");
  Reflect.deleteProperty(globalThis, "tackstitchNumbers");
});

test("from ExcelApi 1.19 on a date is a double with its format", () => {
  host("ExcelApi 1.19", "CustomFunctionsRuntime 1.4");
  announceNumbers();
  expect(toHostCell(46086, "date")).toEqual({ type: "Double", basicValue: 46086, numberFormat: "yyyy-mm-dd" });
});

test("before that, from CustomFunctionsRuntime 1.4 on, it is a formatted number", () => {
  host("CustomFunctionsRuntime 1.4");
  announceNumbers();
  expect(toHostCell(46086, "date")).toEqual({ type: "FormattedNumber", basicValue: 46086, numberFormat: "yyyy-mm-dd" });
});

test("an older host gets the plain number, never an object", () => {
  host();
  announceNumbers();
  expect(toHostCell(46086, "date")).toBe(46086);
});

test("the host is asked when a function first needs to know, and once only", () => {
  announceNumbers();
  expect(toHostCell(46086, "date")).toBe(46086);
  const { asked } = host("ExcelApi 1.19");
  expect(toHostCell(46086, "date")).toMatchObject({ type: "Double" });
  toHostCell(46087, "date");
  expect(asked).toEqual(["ExcelApi 1.19"]);
});
