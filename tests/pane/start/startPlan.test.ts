import { allRules } from "../../../src/checks/allRules";
import { runChecks } from "../../../src/checks/runChecks";
import { exampleMark } from "../../../src/pane/start/exampleMark";
import { exampleRows } from "../../../src/pane/start/exampleRows";
import { foundTables } from "../../../src/pane/start/foundTables";
import { sayPlan } from "../../../src/pane/start/sayPlan";
import { startPlan, type StartChoice } from "../../../src/pane/start/startPlan";
import { startTables } from "../../../src/pane/start/startTables";
import type { ReadTables } from "../../../src/pane/state/ReadTables";
import { readHeading } from "../../../src/sheet/readHeading";
import { readPeople } from "../../../src/sheet/readPeople";
import { readWorkbook } from "../../../src/sheet/readWorkbook";
import type { FakePort, FakeSheet } from "../fakePort";
import { fakePort } from "../fakePort";
import { readSheets } from "../readSheets";

/** A Thursday. */
const TODAY = 46086;
const everything: StartChoice = { tables: startTables.map(({ id }) => id), columns: {}, withExamples: true };

async function readFrom(port: FakePort): Promise<ReadTables> {
  const workbook = await port.readWorkbook();
  if (!workbook.ok) throw new Error("not read");
  return { workbook: workbook.value, ...readWorkbook(workbook.value) };
}
async function started(sheets: readonly FakeSheet[], choice: StartChoice, today = TODAY) {
  const port = fakePort(sheets);
  const before = await readFrom(port);
  const plan = startPlan(foundTables(startTables, before), before.workbook, choice, today);
  const built = await port.build("Start", plan);
  if (!built.ok) throw new Error(built.problem.reason);
  return { port, plan, receipt: built.value, read: await readFrom(port) };
}
const fresh = [{ name: "Sheet1", rows: [] }];

test("a fresh workbook gets every table, each read as what it is, with every heading understood", async () => {
  const { read } = await started(fresh, everything);
  const kinds = startTables.flatMap(({ kind }) => kind ?? []);
  expect(read.tables.map(({ kind }) => kind)).toEqual(kinds);
  for (const table of read.tables) {
    expect([...(table.contested?.keys() ?? [])]).toEqual([]);
    const unknown = table.headings.filter((_, column) => !Object.values(table.columnOf).includes(column));
    // Note is the stylist's own in all tables but that of the pieces.
    expect(unknown).toEqual(table.kind === "pieces" ? [] : ["Note"]);
  }
  expect(read.unread.map(({ tableName }) => tableName)).toEqual(["People", "ClosedDays", "Job"]);
});

test.each(startTables.filter(({ kind }) => kind !== null))(
  "every heading that $name needs is one of its own",
  (table) => {
    for (const heading of table.needed) {
      expect(table.columns.map((column) => column.heading)).toContain(heading);
      expect(readHeading(table.kind ?? "pieces", heading)).not.toBeNull();
    }
    for (const row of table.examples) expect(row.length).toBe(table.columns.length - 1);
  },
);

test("the people of the start are read as people", async () => {
  const { read } = await started(fresh, everything);
  const people = read.workbook.sheets.find(({ name }) => name === "People");
  expect(readPeople(people?.values ?? [])).toMatchObject({ ok: true, value: { dressers: 1, chairs: 1, cameras: 1 } });
});

test.each([0, 1, 2, 3, 4, 5, 6])(
  "the examples give the sheet check nothing to find, whatever the weekday (%d)",
  async (later) => {
    const { read } = await started(fresh, everything, TODAY + later);
    const workbook = { dateSystem: read.workbook.dateSystem, tables: read.tables };
    const findings = runChecks(workbook, { asOf: TODAY + later, rules: allRules });
    expect(findings.map(({ ruleId, message }) => `${ruleId}: ${message}`)).toEqual([]);
  },
);

test("lists point at the tables that come with them, and at those that are there", async () => {
  const { plan } = await started(fresh, everything);
  const pieces = plan.addSheets.find(({ name }) => name === "Pieces");
  expect(pieces?.lists[3]).toBe("='Lenders'!$A$2:$A$501");
  const own = {
    name: "My lenders",
    tables: [{ name: "Lenders", row: 1, column: 1, rowCount: 2, columnCount: 3 }],
    rows: [[], [null, "Terms", "Lender", "Contact"], [null, "7 days", "Ado", "Bea"]],
  };
  const beside = await started([own], { tables: ["pieces"], columns: {}, withExamples: false });
  expect(beside.plan.addSheets[0]?.lists[3]).toBe("='My lenders'!$C$3:$C$502");
  expect(beside.plan.addSheets[0]?.lists[18]).toBeNull();
});

test("a name that is taken gets a number", async () => {
  const taken = [{ name: "pieces", rows: [["hello"]] }];
  const { plan } = await started(taken, { tables: ["pieces"], columns: {}, withExamples: false });
  expect(plan.addSheets.map(({ name, tableName }) => [name, tableName])).toEqual([["Pieces 2", "Pieces2"]]);
});

const short = {
  name: "Loans",
  tables: [{ name: "Loans", row: 0, column: 0, rowCount: 3, columnCount: 5 }],
  rows: [
    ["Item no.", "Description", "Borrowed from", "Date out", "Ins. value"],
    ["1", "coat", "Ado", 46080, 900],
    ["2", "boots", "Ado", 46080, 200],
  ],
};

test("of a table that is there only the columns that no heading means are missing", async () => {
  const [pieces] = foundTables(startTables, await readFrom(fakePort([short])));
  expect(pieces?.place).toMatchObject({ sheetName: "Loans", at: { row: 0, column: 0 } });
  const missing = pieces?.missing.map(({ heading }) => heading) ?? [];
  for (const heading of ["Due", "Back", "Currency", "Note"]) expect(missing).toContain(heading);
  for (const heading of ["Piece", "Description", "Lender", "Out", "Value"]) expect(missing).not.toContain(heading);
});

test("missing columns are added at the right, said before, read at once, and taken away again", async () => {
  const choice = { tables: [], columns: { pieces: ["Back", "Due"] }, withExamples: false };
  const { port, plan, receipt, read } = await started([short], choice);
  expect(sayPlan(plan, read.workbook)).toEqual([
    'On "Loans", in F1 to G1: Due and Back. The cells there are blank and stay so under the headings.',
  ]);
  expect(read.tables[0]).toMatchObject({ columnOf: { due: 5, back: 6 } });
  expect((await port.restore(receipt)).ok).toBe(true);
  expect((await readFrom(port)).tables[0]?.headings).toEqual(short.rows[0]);
});

test("the example rows are found by their mark, and cleared without anything else", async () => {
  const { port, read } = await started(fresh, everything);
  const rows = exampleRows(read);
  expect(rows).toHaveLength(startTables.reduce((sum, { examples }) => sum + examples.length, 0));
  expect(
    (
      await port.write(
        "Clear",
        rows.flatMap(({ edits }) => edits),
      )
    ).ok,
  ).toBe(true);
  const after = await readFrom(port);
  expect(exampleRows(after)).toEqual([]);
  expect(JSON.stringify(after.workbook)).not.toContain(exampleMark);
  expect(after.tables.flatMap(({ dataRows }) => dataRows)).toEqual([]);
  expect(readPeople(after.workbook.sheets.find(({ name }) => name === "People")?.values ?? [])).toMatchObject({
    ok: true,
  });
});

test("a row whose mark was cleared is the user's own", async () => {
  const { port, read } = await started(fresh, everything);
  const [first] = exampleRows(read);
  const mark = first?.edits.find(({ expected }) => expected === exampleMark);
  port.typed(first?.sheetId ?? "", mark?.at.row ?? 0, mark?.at.column ?? 0, null);
  expect(exampleRows(await readFrom(port))).toHaveLength(exampleRows(read).length - 1);
});

test("tables that are there are not offered again", async () => {
  const { read } = await started(fresh, everything);
  for (const { place, missing } of foundTables(startTables, read)) {
    expect(place).not.toBeNull();
    expect(missing).toEqual([]);
  }
});

test("a table of pieces with a column of jobs is not the job's own, and facts of the job beside their words are", async () => {
  const loans = {
    name: "Loans",
    tables: [{ name: "Loans", row: 0, column: 0, rowCount: 2, columnCount: 4 }],
    rows: [
      ["Piece", "Description", "Out", "Job"],
      ["1", "coat", 46080, "Harbour"],
    ],
  };
  const facts = { name: "Facts", rows: [["Harbour"], [null], ["As-of day", 46086], ["Last shoot day", 46080]] };
  const placeOfJob = (read: Awaited<ReturnType<typeof readSheets>>) =>
    foundTables(startTables, read).find(({ start }) => start.id === "job")?.place;
  expect(placeOfJob(await readSheets([loans]))).toBeNull();
  expect(placeOfJob(await readSheets([loans, facts]))).toEqual({
    at: { sheetId: "s1", row: 2, column: 0 },
    sheetName: "Facts",
  });
});
