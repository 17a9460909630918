import scenario from "../../src/build/sample/two-day-shoot.json";
import { allRules } from "../../src/checks/allRules";
import type { Finding } from "../../src/checks/finding";
import { runChecks } from "../../src/checks/runChecks";
import { readWorkbook } from "../../src/sheet/readWorkbook";
import figures from "../../sample-workbooks/two-day-shoot.figures.json";
import expected from "../../sample-workbooks/two-day-shoot.findings.json";
import { sampleWorkbook } from "./sampleWorkbook";
import { serialOf } from "./serialOf";

/** The slips that were typed into the sample workbook on purpose, against what the sheet check finds there. */
let found: readonly (Finding & { item: string })[];

beforeAll(async () => {
  const snapshot = await sampleWorkbook();
  const { tables } = readWorkbook(snapshot);
  const { sheets } = snapshot;
  const rowsOf = new Map(sheets.map((sheet) => [sheet.name, sheet.values]));
  const findings = runChecks({ dateSystem: 1900, tables, sheets }, { asOf: serialOf(scenario.asOf) });
  found = findings.map((finding) => ({
    ...finding,
    item: String(rowsOf.get(finding.sheetName)![finding.at.row]![0]),
  }));
});

test("every rule named in the list exists", () => {
  const ids = new Set(allRules.map((rule) => rule.id));
  for (const { rule } of expected.planted) expect([rule, ids.has(rule)]).toEqual([rule, true]);
});

test.each(expected.planted.map((slip) => [slip.what, slip] as const))("finds %s", (_, slip) => {
  const here = found.filter(
    (finding) => finding.sheetName === slip.sheet && finding.item === slip.item && finding.heading === slip.heading,
  );
  expect(here.map((finding) => finding.ruleId)).toEqual([slip.rule]);
});

test("the late pieces it reports are those that LibreOffice Calc works out", () => {
  const late = found.filter((finding) => finding.ruleId === "lateNotBack").map((finding) => finding.item);
  expect([...late].sort()).toEqual(figures.late.map(([item]) => item).sort());
});

test("it finds nothing else: no false alarm in 127 pieces, 14 lenders, 20 looks, the requests, the receipts and the run", () => {
  const known = new Set(expected.planted.map((slip) => `${slip.rule} ${slip.sheet} ${slip.item} ${slip.heading}`));
  const others = found
    .filter((finding) => finding.ruleId !== "lateNotBack")
    .map((finding) => `${finding.ruleId} ${finding.sheetName} ${finding.item} ${finding.heading}`)
    .filter((line) => !known.has(line));
  expect(others).toEqual([]);
});
