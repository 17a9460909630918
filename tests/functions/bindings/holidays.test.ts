import { NullValueObject, NumberValueObject, StringValueObject, type BaseValueObject } from "@univerjs/engine-formula";
import { engineFunction } from "../../../src/bench/functions/engineFunction";
import { functionDocs } from "../../../src/build/functionDocs.mjs";
import { due } from "../../../src/functions/bindings/due";
import { holidays } from "../../../src/functions/bindings/holidays";
import { serialOf } from "../../outside/serialOf";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

test("dates are shown as such, with their names beside them", () => {
  expect(holidays("Scotland" as unknown, "2026-06-01", "2026-06-30")).toEqual([
    ["Date", "Holiday"],
    [{ type: "Double", basicValue: serialOf("2026-06-15"), numberFormat: "yyyy-mm-dd" }, "World Cup bank holiday"],
  ]);
});

test("what it gives can be passed on as the closed days of a due date, headings, names, formats and all", () => {
  const closed = holidays("England and Wales" as unknown, "2026-01-01", "2026-12-31");
  expect(sayResult(due(serialOf("2026-04-01"), "3 working days", null, closed))).toBe("2026-04-08");
  const none = holidays("England and Wales" as unknown, "2026-06-01", "2026-06-30");
  expect(sayResult(due(serialOf("2026-04-01"), "3 working days", null, none))).toBe("2026-04-06");
});

test("and so it can inside a formula of the grid's engine", () => {
  const engineFunctionOf = (id: string, run: (...args: never[]) => unknown) => {
    const { params } = functionDocs().find((doc) => doc.id === id)!;
    const parameters = params.map(({ name, optional, matrix }) => ({
      name,
      optional,
      dimensionality: matrix ? "matrix" : "scalar",
    }));
    const parts = { metadata: { parameters }, run: run as (...args: unknown[]) => unknown, blank: () => null };
    const Made = engineFunction({ ...parts, sentences: null } as never);
    return (...given: BaseValueObject[]) => {
      const made = new Made(`TACK.${id}`);
      made.setRefInfo("book", "sheet", 4, 2);
      return made.calculate(...given) as BaseValueObject;
    };
  };
  const text = (value: string) => StringValueObject.create(value);
  const closed = engineFunctionOf("HOLIDAYS", holidays)(text("UK-ENG"), text("2026-01-01"), text("2026-12-31"));
  const dueOn = engineFunctionOf("DUE", due)(
    NumberValueObject.create(serialOf("2026-04-01")),
    text("3 working days"),
    NullValueObject.create(),
    closed,
  );
  expect(dueOn.getValue()).toBe(serialOf("2026-04-08"));
});
