import { sayProblem } from "../../src/domain/wording";
import { numberArguments } from "../../src/functions/numberArguments";

function said(raws: Readonly<Record<string, unknown>>, aboveZero: readonly string[] = []): unknown {
  const numbers = numberArguments(raws, aboveZero);
  return numbers.ok ? numbers.value : sayProblem(numbers.problem);
}

test("numbers are read by name, also when kept as text or with a format", () => {
  const given = { type: "Double", basicValue: 7, numberFormat: "0" };
  expect(said({ length: "12.5", width: 3, height: given })).toEqual({ length: 12.5, width: 3, height: 7 });
});

test("0 is a number, except where a cell left blank must not pass for a measure", () => {
  expect(said({ angle: 0 })).toEqual({ angle: 0 });
  expect(said({ hours: 0 }, ["hours"])).toBe('hours: "0" cannot be used; give a number above 0.');
});

test("what is blank, below 0 or no number is named, the first in order", () => {
  expect(said({ angle: 1, travel: null, hours: "x" })).toBe("travel is blank; give a number of 0 or more.");
  expect(said({ travel: -2 })).toBe('travel: "-2" cannot be used; give a number of 0 or more.');
  expect(said({ travel: "far" })).toBe('travel: "far" cannot be used; give a number of 0 or more.');
});

test("what to give is said with its unit", () => {
  const numbers = numberArguments({ length: "62 cm" }, ["length"], { length: ", in cm" });
  expect(numbers.ok ? null : sayProblem(numbers.problem)).toBe(
    'length: "62 cm" cannot be used; give a number above 0, in cm.',
  );
});
