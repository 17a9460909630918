import fc from "fast-check";
import { engineFormula } from "../../../src/bench/file/engineFormula";
import { fileFormula } from "../../../src/bench/file/fileFormula";
import { tokenizeFormula } from "../../../src/sheet/tokenizeFormula";

/** The file's form beside the typed one. The prefixes are Excel's own, as its documentation of the _xlfn. prefix shows them. */
const PAIRS: readonly (readonly [string, string])[] = [
  ["_xldudf_TACK_DUE(A2,B2)", "=TACK.DUE(A2,B2)"],
  ['IFERROR(_xldudf_TACK_DUE(A2,B2),"")', '=IFERROR(TACK.DUE(A2,B2),"")'],
  ["_xlfn._xlws.FILTER(Loans[],Loans[Lender]=B9)", "=FILTER(Loans[],Loans[Lender]=B9)"],
  ["_xldudf_TACK_LENDERTOTALS(Loans[#All],AsOf)", "=TACK.LENDERTOTALS(Loans[#All],AsOf)"],
  ["_xlfn.LET(_xlpm.late,D2>0,IF(_xlpm.late,1,0))", "=LET(late,D2>0,IF(late,1,0))"],
  ["_xlfn.XLOOKUP(A2,Lenders[Lender],Lenders[Terms])", "=XLOOKUP(A2,Lenders[Lender],Lenders[Terms])"],
  ["WORKDAY.INTL(A2,3)", "=WORKDAY.INTL(A2,3)"],
  ["SUM(Sheet1!$A$1:$B$2)", "=SUM(Sheet1!$A$1:$B$2)"],
  ['"_xldudf_TACK_DUE( stays"&A1', '="_xldudf_TACK_DUE( stays"&A1'],
  ["_xlfn.BYROW(A1:B2,_xlfn.LAMBDA(_xlpm.row,SUM(_xlpm.row)))", "=BYROW(A1:B2,LAMBDA(row,SUM(row)))"],
];

test.each(PAIRS)("%s in the file is %s in the grid, both ways", (inFile, typed) => {
  expect(engineFormula(inFile)).toBe(typed);
  expect(fileFormula(typed)).toBe(inFile);
});

test("a call that Excel kept with the number of the add-in's book in front loses it", () => {
  expect(engineFormula("[2]!_xldudf_TACK_DUE(A2,B2)")).toBe("=TACK.DUE(A2,B2)");
  expect(engineFormula("[2]Sheet1!A2")).toBe("=[2]Sheet1!A2");
});

test("an add-in's call in small letters is still ours", () => {
  expect(engineFormula("_xldudf_tack_due(A2)")).toBe("=TACK.DUE(A2)");
  expect(fileFormula("=tack.due(A2)")).toBe("_xldudf_TACK_DUE(A2)");
});

test("cutting a formula up loses nothing, whatever it is", () => {
  fc.assert(
    fc.property(
      fc.string(),
      (text) =>
        tokenizeFormula(text)
          .map((token) => token.text)
          .join("") === text,
    ),
  );
});

test("quotes, brackets inside brackets and an apostrophe before a bracket stay in one piece", () => {
  const kinds = (formula: string) => tokenizeFormula(formula).map(({ kind, text }) => `${kind} ${text}`);
  expect(kinds('A&"x""y"')).toEqual(["name A", "other &", 'text "x""y"']);
  expect(kinds("T[[#This Row],[a'[b]]")).toEqual(["name T", "bracket [[#This Row],[a'[b]]"]);
  expect(kinds("'My sheet'!A1")).toEqual(["sheet 'My sheet'", "other !", "name A1"]);
});
