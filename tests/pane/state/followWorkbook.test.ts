import type { CheckRun } from "../../../src/checks/checkRun";
import type { Finding } from "../../../src/checks/finding";
import type { Problem } from "../../../src/domain/problem";
import { followWorkbook } from "../../../src/pane/state/followWorkbook";
import type { ReadTables } from "../../../src/pane/state/ReadTables";
import type { KeptChoices } from "../../../src/sheet/keptChoices";
import { parseKeptChoices } from "../../../src/sheet/parseKeptChoices";
import { fakePort } from "../fakePort";

const sheets = [
  { name: "Pieces", rows: [["Piece"], ["1"]] },
  { name: "Lenders", rows: [["Lender"], ["Ado"]] },
];

function follow(port: ReturnType<typeof fakePort>) {
  const told: string[] = [];
  const pauses: string[] = [];
  const reads: ReadTables[] = [];
  const checkedFor: number[] = [];
  const problems: Problem[] = [];
  const foundWith: KeptChoices[] = [];
  const follower = followWorkbook(
    port,
    100,
    {
      findTables: (_, choices) => {
        foundWith.push(choices);
        return { tables: [], unread: [], leftOut: [] };
      },
      readChoices: async () => {
        const kept = await port.readKept("columns");
        return kept.ok ? parseKeptChoices(kept.value) : null;
      },
      check: (read, asOf) => {
        checkedFor.push(asOf);
        const findings = read.workbook.sheets.map((sheet) => ({ sheetName: sheet.name }) as Finding);
        return { findings } as unknown as CheckRun;
      },
    },
    {
      began: () => told.push("began"),
      read: (read, isWhole) => {
        reads.push(read);
        told.push(isWhole ? "read whole" : "read sheets");
      },
      checked: (findings) => told.push(`checked ${findings.map((finding) => finding.sheetName).join(", ")}`),
      failed: (problem) => {
        problems.push(problem);
        told.push("failed");
      },
      ended: () => told.push("ended"),
    },
    async () => {
      pauses.push(`${told.at(-1)}, ${checkedFor.length} checked`);
    },
  );
  return { follower, pauses, told, reads, checkedFor, problems, foundWith };
}

const settle = () => new Promise((resolve) => setTimeout(resolve, 5));

test("the host may breathe before what was read is shown, before it is checked, and before the findings are shown", async () => {
  const { pauses } = follow(fakePort(sheets));
  await settle();
  expect(pauses).toEqual([
    "began, 0 checked",
    "read whole, 0 checked",
    "read whole, 1 checked",
    "checked Pieces, Lenders, 1 checked",
  ]);
});

test("the workbook is read whole and checked at once", async () => {
  const { told } = follow(fakePort(sheets));
  await settle();
  expect(told).toEqual(["began", "read whole", "checked Pieces, Lenders", "ended"]);
});

test("after an edit only the sheet that changed is read, and its new value is seen", async () => {
  const port = fakePort(sheets);
  const { told, reads } = follow(port);
  await settle();
  told.length = 0;
  port.typed("s1", 1, 0, "Ade");
  await settle();
  expect(told).toEqual(["began", "read sheets", "checked Pieces, Lenders", "ended"]);
  expect(port.calls.filter((call) => call === "readSheet")).toHaveLength(1);
  expect(reads.at(-1)?.workbook.sheets[1]?.values).toEqual([["Lender"], ["Ade"]]);
});

test("edits that arrive during a pass are gathered into the next one and none is lost", async () => {
  const port = fakePort(sheets);
  const { reads } = follow(port);
  for (let edit = 0; edit < 20; edit++) port.typed("s0", 1, 0, edit);
  await settle();
  expect(reads.at(-1)?.workbook.sheets[0]?.values[1]).toEqual([19]);
  expect(reads.length).toBeLessThanOrEqual(2);
});

test("a sheet deleted while it is being read again leads to one whole reading and no complaint", async () => {
  const port = fakePort(sheets);
  const { told, reads, problems } = follow(port);
  await settle();
  port.failNext("readSheet");
  told.length = 0;
  port.typed("s0", 1, 0, "2");
  await settle();
  expect(problems).toEqual([]);
  expect(told).toEqual(["began", "read sheets", "checked Pieces, Lenders", "ended"]);
  port.deleteSheet("s1");
  await settle();
  expect(reads.at(-1)?.workbook.sheets.map((sheet) => sheet.name)).toEqual(["Pieces"]);
});

test("a reading that fails is told, keeps what was read, and the next change is followed as before", async () => {
  const port = fakePort(sheets);
  const { follower, told, reads } = follow(port);
  await settle();
  told.length = 0;
  port.failNext("readWorkbook");
  follower.readAgain();
  await settle();
  expect(told).toEqual(["began", "failed", "ended"]);
  port.typed("s0", 1, 0, "9");
  await settle();
  expect(reads.at(-1)?.workbook.sheets[0]?.values[1]).toEqual(["9"]);
});

test("another day is checked without reading again", async () => {
  const port = fakePort(sheets);
  const { follower, checkedFor } = follow(port);
  await settle();
  const callsBefore = port.calls.length;
  follower.checkFor(123);
  await settle();
  expect(checkedFor).toEqual([100, 123]);
  expect(port.calls).toHaveLength(callsBefore);
});

test("after stopping nothing is told any more", async () => {
  const port = fakePort(sheets);
  const { follower, told } = follow(port);
  await settle();
  follower.stop();
  told.length = 0;
  port.typed("s0", 1, 0, "3");
  follower.readAgain();
  await settle();
  expect(told).toEqual([]);
});

const kept = (heading: string) => ({
  columns: { Pieces: [{ kind: "pieces" as const, field: "value", heading }] },
  kinds: {},
});

test("the tables are found with the choices that the workbook keeps", async () => {
  const port = fakePort(sheets);
  await port.writeKept("columns", JSON.stringify(kept("Ins. amt")));
  const { foundWith } = follow(port);
  await settle();
  expect(foundWith).toMatchObject([kept("Ins. amt")]);
});

test("a choice made by hand finds the tables anew and checks them, without reading the workbook again", async () => {
  const port = fakePort(sheets);
  const { follower, told, foundWith } = follow(port);
  await settle();
  told.length = 0;
  const callsBefore = port.calls.length;
  follower.readAs(kept("Price"));
  await settle();
  expect(told).toEqual(["began", "read sheets", "checked Pieces, Lenders", "ended"]);
  expect(foundWith.at(-1)).toEqual(kept("Price"));
  expect(port.calls.slice(callsBefore)).toEqual([]);
});

test("choices that cannot be read just now leave those that were read before", async () => {
  const port = fakePort(sheets);
  await port.writeKept("columns", JSON.stringify(kept("Ins. amt")));
  const { follower, foundWith } = follow(port);
  await settle();
  port.failNext("readKept");
  follower.readAgain();
  await settle();
  expect(foundWith.at(-1)).toMatchObject(kept("Ins. amt"));
});
