import { rowReferences } from "../../../src/bench/grid/rowReferences";

test.each([
  ["=Loans[@Terms]", null, "=Loans[[#This Row],[Terms]]"],
  ["=Loans[@[Date out]]", null, "=Loans[[#This Row],[Date out]]"],
  ['=[@Terms]&"[@no]"', "Loans", '=Loans[[#This Row],[Terms]]&"[@no]"'],
  ["=SUM([@Qty],[@[Ins. value]])", "Loans", "=SUM(Loans[[#This Row],[Qty]],Loans[[#This Row],[Ins. value]])"],
  ["=Loans[@]", null, "=Loans[#This Row]"],
])("%s in the table %s is spelt %s", (typed, table, spelt) => {
  expect(rowReferences(typed, table)).toBe(spelt);
});

test("outside a table a short reference without a name is left for the engine to refuse", () => {
  expect(rowReferences("=[@Terms]", null)).toBe("=[@Terms]");
});

test("a bracket half typed is left alone", () => {
  expect(rowReferences("=Loans[@Ter", "Loans")).toBe("=Loans[@Ter");
});
