import { dueCalendar } from "../../../../src/pane/handOver/documents/dueCalendar";
import type { FakeSheet } from "../../fakePort";
import { DAY, jobSheets } from "./jobSheets";
import { sourceOf } from "./sourceOf";

const eventsOf = async (sheets: readonly FakeSheet[], asOf = DAY) => {
  const { ownFile } = dueCalendar(await sourceOf(sheets, asOf));
  return ownFile?.kind === "calendar" ? ownFile.events : [];
};
/** The sheets with some cells of the loans changed, by row and column. */
const changed = (cells: Readonly<Record<string, number | null>>): readonly FakeSheet[] =>
  jobSheets.map((sheet) =>
    sheet.name !== "Loans"
      ? sheet
      : {
          ...sheet,
          rows: sheet.rows.map((row, at) =>
            row.map((cell, column) => (`${at},${column}` in cells ? cells[`${at},${column}`]! : cell)),
          ),
        },
  );

test("there is an entry for each lender and day something is due, and one for sending it a working day before", async () => {
  expect(
    (await eventsOf(jobSheets)).map(({ day, summary, description, location }) => ({
      day,
      summary,
      description,
      location,
    })),
  ).toEqual([
    {
      day: DAY,
      summary: "Send by courier: 1 piece to Ado & Fils, due 2026-03-06",
      description: "1 wool coat",
      location: "",
    },
    {
      day: DAY + 1,
      summary: "Due back: 1 piece to Ado & Fils",
      description: "1 wool coat",
      location: "3 Ropewalk; yard",
    },
    {
      day: DAY + 4,
      summary: "Due back: 2 pieces to Maison Orla",
      description: "2 × 3 felt hat",
      location: "8 Lantern Row",
    },
  ]);
});

test("an entry keeps its name when its day is put off, a row moves, or one of its pieces comes back", async () => {
  const uidOf = async (sheets: readonly FakeSheet[]) =>
    (await eventsOf(sheets)).find(({ summary }) => /Due.*Ado/.test(summary))?.uid;
  const before = await uidOf(jobSheets);
  expect(before).toMatch(/^due-[0-9a-f]{16}@test$/);
  expect(await uidOf(changed({ "1,10": DAY + 8, "2,10": DAY + 8 }))).toBe(before);
  expect(await uidOf(changed({ "1,11": DAY, "2,11": null }))).toBe(before);
  const [loans, ...others] = jobSheets;
  expect(
    await uidOf([
      { name: "Loans", rows: [loans!.rows[0]!, ...loans!.rows.slice(3), ...loans!.rows.slice(1, 3)] },
      ...others,
    ]),
  ).toBe(before);
});

test("no two entries share a name, also where pieces have no number", async () => {
  const rows = [["Lender", "Out", "Due"], ...[1, 2, 3].map((days) => ["Ado & Fils", DAY - 2, DAY + days])];
  const events = await eventsOf([{ name: "Loans", rows }]);
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(3);
});

test("what has no due day is counted, and that no courier days are known is said", async () => {
  const { missing } = dueCalendar(await sourceOf(jobSheets.slice(0, 1), DAY));
  expect(missing).toEqual([
    "1 row has no due day and so no entry: fill the column Due.",
    "No lender has courier days, so there are no entries for sending: fill the column Courier days.",
  ]);
});
