import fc from "fast-check";
import { ownCalls } from "../../../src/pane/columns/ownCalls";

const said = (formula: string) => ownCalls(formula).map(({ id, args }) => [id, ...args.map(({ text }) => text)]);

test.each([
  ["=TACK.VALUEOUT(Loans[#All],AsOf)", [["VALUEOUT", "Loans[#All]", "AsOf"]]],
  ["=_xldudf_TACK_LATEROWS(Loans!A1:C9,B1)", [["LATEROWS", "Loans!A1:C9", "B1"]]],
  ['=TACK.DUE(A2,"7 days, or so)")', [["DUE", "A2", '"7 days, or so)"']]],
  ["=TACK.DUE(T[[#This Row],[Out, (date)]],B2)", [["DUE", "T[[#This Row],[Out, (date)]]", "B2"]]],
  ["=TACK.DUE('It''s, a (sheet'!A1,B2)", [["DUE", "'It''s, a (sheet'!A1", "B2"]]],
  ['=TACK.DUE(A2,"x",,{"a","b";"c","d"})', [["DUE", "A2", '"x"', "", '{"a","b";"c","d"}']]],
  ["=TACK.MEALBY()", [["MEALBY", ""]]],
  [
    "=IF(TACK.DAYSLATE(TACK.DUE(A1,B1),C1,D1)>0,1,0)",
    [
      ["DAYSLATE", "TACK.DUE(A1,B1)", "C1", "D1"],
      ["DUE", "A1", "B1"],
    ],
  ],
  ['="=TACK.DUE(A1)"', []],
  ["=MYTACK.DUE(A1)", []],
  ["=TACK.DUE(A1", []],
])("%s", (formula, calls) => {
  expect(said(formula)).toEqual(calls);
});

test("never fails, and each argument stands where it says", () => {
  const piece = fc.constantFrom("TACK.DUE(", "A1", ",", ")", "(", "{", "}", '"', "'", "[", "]", "x");
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(piece).map((parts) => parts.join("")),
      ),
      (formula) => {
        for (const { args, closesAt } of ownCalls(formula)) {
          expect(formula[closesAt]).toBe(")");
          for (const { from, until, text } of args) expect(formula.slice(from, until)).toBe(text);
        }
      },
    ),
  );
});
