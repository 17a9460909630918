import { functionDocs } from "../../src/build/functionDocs.mjs";
import { outcomeOf } from "./outcomeOf";
import { readFormula } from "./readFormula";
import { standInHost } from "./standInHost";

// Reported of the hosts: a blank cell and an argument left out arrive as null, undefined, "" or 0; one cell arrives as
// itself or as a range of one; a number with a format arrives as an object.

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

/** Arguments in which 0 is as good as blank: a day, a text. In any other a 0 may be meant. */
const ZERO_IS_BLANK = new Set([
  "out",
  "due",
  "back",
  "asOf",
  "shoot",
  "onDate",
  "columns",
  "from",
  "to",
  "now",
  "lastMeal",
]);

const examples = functionDocs().flatMap((doc) =>
  doc.examples.map((example) => [example.formula, doc, readFormula(example.formula).args] as const),
);

/** The example's arguments as far as the function takes them, those left out as a host would send them. */
function asSent(
  args: readonly unknown[],
  doc: (typeof examples)[number][1],
  blankFor: (param: (typeof doc.params)[number]) => unknown,
): unknown[] {
  return doc.params.map((param, place) => args[place] ?? blankFor(param));
}

describe.each(examples)("%s", (_formula, doc, args) => {
  const name = doc.id.toLowerCase();
  const usual = () =>
    outcomeOf(
      name,
      asSent(args, doc, () => null),
    );

  test.each([[undefined], [""], ["0 where 0 is blank"]])("arguments left out may arrive as %j", (blank) => {
    const blankFor = (param: (typeof doc.params)[number]) => {
      if (blank !== "0 where 0 is blank") return blank;
      return param.matrix || ZERO_IS_BLANK.has(param.name) ? 0 : null;
    };
    expect(outcomeOf(name, asSent(args, doc, blankFor))).toEqual(usual());
  });

  test("an optional range left out may arrive as one blank cell", () => {
    expect(
      outcomeOf(
        name,
        asSent(args, doc, (param) => (param.matrix ? [[null]] : null)),
      ),
    ).toEqual(usual());
  });

  test.each([[null], [undefined], [0]])("blank cells inside a range may arrive as %j", (blank) => {
    const sent = asSent(args, doc, () => null).map((arg) =>
      Array.isArray(arg) ? arg.map((row: unknown[]) => row.map((cell) => (cell === "" ? blank : cell))) : arg,
    );
    expect(outcomeOf(name, sent)).toEqual(usual());
  });

  test("a number may arrive with its format, and a single value as a range of one cell", () => {
    const formatted = (value: unknown): unknown =>
      typeof value === "number" ? { type: "FormattedNumber", basicValue: value, numberFormat: "General" } : value;
    const sent = asSent(args, doc, () => null);
    const wrapped = sent.map((arg) =>
      Array.isArray(arg) ? arg.map((row: unknown[]) => row.map(formatted)) : formatted(arg),
    );
    expect(outcomeOf(name, wrapped)).toEqual(usual());
    expect(
      outcomeOf(
        name,
        sent.map((arg) => (Array.isArray(arg) ? arg : [[arg]])),
      ),
    ).toEqual(usual());
  });
});
