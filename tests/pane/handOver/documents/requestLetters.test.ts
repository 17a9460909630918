import { requestLetters } from "../../../../src/pane/handOver/documents/requestLetters";
import { DAY, jobSheets } from "./jobSheets";
import { sourceOf } from "./sourceOf";

const job = {
  job: "Tide line",
  stylist: "Runa Vale",
  reached: "runa@vale.example",
  direction: "Salt, rope and wet slate.",
  credit: "Tide line, spring issue; lenders named beside each look",
  responsible: "Runa Vale, under her own cover",
};
const lettersOf = async (given: Parameters<typeof sourceOf>[2] = {}) => {
  const made = requestLetters(await sourceOf(jobSheets, DAY, { job, ...given }));
  return { ...made, letters: made.ownFile?.kind === "letters" ? made.ownFile.letters : [] };
};

test("each lender still to be asked gets one letter with everything wanted of it", async () => {
  const { letters } = await lettersOf();
  expect(letters.map(({ lender, to }) => [lender, to])).toEqual([
    ["Ado & Fils", "ines@ado.example"],
    ["Wren Archive", ""],
  ]);
  expect(letters[0]?.subject).toBe("Loan request, Tide line, 2026-03-05: Ado & Fils");
  expect(letters[0]?.body).toBe(
    `Dear Ines,

I am styling Tide line, to be photographed on Thu 2026-03-05, and would like to ask you for the loan of the following:

- a camel coat; needed by Wed 2026-03-04; to be collected Monday from 10
- grey boots, 39

The direction: Salt, rope and wet slate.

For your letter of responsibility:
- Responsible: Runa Vale, under her own cover
- Borrowed by: Runa Vale
- For: Tide line
- Last shoot day: Thu 2026-03-05
- Return, on your terms: 7 days
Pieces are counted and their condition noted with you, against your slip, when they go out and when they come back.

Credit: Tide line, spring issue; lenders named beside each look

Please let me know what you can lend, and when and where it can be collected.

With thanks
Runa Vale
runa@vale.example`,
  );
});

test("a letter notes its requests as asked, in blank cells alone", async () => {
  const { letters } = await lettersOf();
  expect(letters[0]?.asked).toEqual([
    { at: { sheetId: "s4", row: 1, column: 1 }, expected: null, value: DAY, numberFormat: "yyyy-mm-dd" },
    { at: { sheetId: "s4", row: 3, column: 1 }, expected: null, value: DAY, numberFormat: "yyyy-mm-dd" },
  ]);
});

test("a cell of Asked that holds a formula is not written, and its letter is there all the same", async () => {
  const sheets = jobSheets.map((sheet) =>
    sheet.name === "Requests"
      ? {
          ...sheet,
          rows: sheet.rows.map((row, at) => (at === 4 ? row.map((cell, column) => (column === 1 ? "" : cell)) : row)),
          formulas: { "4,1": '=IF(A1="x",1,"")' },
        }
      : sheet,
  );
  const { ownFile } = requestLetters(await sourceOf(sheets, DAY, { job }));
  if (ownFile?.kind !== "letters") throw new Error("no letters");
  expect(ownFile.letters.map(({ lender, asked }) => [lender, asked.length])).toEqual([
    ["Ado & Fils", 2],
    ["Wren Archive", 0],
  ]);
});

test("what the letters do not say is told", async () => {
  const { missing } = await lettersOf({ job: { ...job, direction: "", credit: "" } });
  expect(missing).toEqual([
    "The letters do not say: Direction and Credit. Fill them in under The job.",
    "1 lender has no mail address under Contact; the draft is left without one.",
  ]);
});

test("a letter names the days of the shoot to come, and those that have been only where all have", async () => {
  const sheets = jobSheets.map((sheet) =>
    sheet.name === "Looks"
      ? {
          ...sheet,
          rows: sheet.rows.map((row, at) =>
            at === 1 ? row.map((cell, column) => (column === 2 ? DAY + 9 : cell)) : row,
          ),
        }
      : sheet,
  );
  const subjectOn = async (day: number) => {
    const { ownFile } = requestLetters(await sourceOf(sheets, day, { job }));
    return ownFile?.kind === "letters" ? ownFile.letters[1]?.subject : undefined;
  };
  expect(await subjectOn(DAY)).toBe("Loan request, Tide line, 2026-03-05, 2026-03-14: Wren Archive");
  expect(await subjectOn(DAY + 1)).toBe("Loan request, Tide line, 2026-03-14: Wren Archive");
  expect(await subjectOn(DAY + 10)).toBe("Loan request, Tide line, 2026-03-05, 2026-03-14: Wren Archive");
});

test("no letter names who wears what", async () => {
  const { letters } = await lettersOf();
  expect(letters.map(({ body }) => body).join()).not.toMatch(/Mina|Teo/);
});

test("where everybody is asked, or there are no requests, a sentence says so", async () => {
  const one = await lettersOf({ lenderKey: "maisonorla" });
  expect(one.missing).toEqual(["Nobody is left to be asked: every request has something under Asked or Answer."]);
  const { missing } = requestLetters(await sourceOf(jobSheets.slice(0, 2), DAY, { job }));
  expect(missing[0]).toMatch(/no table of requests/);
});
