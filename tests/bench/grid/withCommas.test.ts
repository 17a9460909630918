import fc from "fast-check";
import { withCommas } from "../../../src/bench/grid/withCommas";
import { withSemicolons } from "../../../src/pane/functions/withSemicolons";

test.each([
  ['=TACK.DUE(H4;"5 days; from receipt")', '=TACK.DUE(H4,"5 days; from receipt")'],
  ["=TACK.BAGS(Loans[#All];12,5)", "=TACK.BAGS(Loans[#All],12.5)"],
  ["=SUM(A1,5)", "=SUM(A1,5)"],
  ["=SUM({1,2;3,4})", "=SUM({1,2;3,4})"],
  ["=TACK.VALUEOUT(Loans[[#All];[a;b]];B4)", "=TACK.VALUEOUT(Loans[[#All];[a;b]],B4)"],
])("%s is read as %s", (typed, read) => {
  expect(withCommas(typed)).toBe(read);
});

test("what the pane shows for a semicolon is read back as the formula it stands for", () => {
  const argument = fc.constantFrom("A1", "12.5", '"a;b,c"', "Loans[Ins. value]", "TODAY()", "{1,2;3,4}", "'Day 1'!B4");
  fc.assert(
    fc.property(fc.array(argument, { minLength: 2, maxLength: 5 }), (given) => {
      const formula = `=TACK.DUE(${given.join(",")})`;
      expect(withCommas(withSemicolons(formula))).toBe(formula);
    }),
  );
});
