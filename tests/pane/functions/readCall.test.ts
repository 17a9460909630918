import { functionDocs } from "../../../src/pane/functions/functionDocs";
import { readCall } from "../../../src/pane/functions/readCall";
import { termsExamples } from "../../../src/pane/functions/termsExamples";
import { sayTermsRead } from "../../../src/pane/sayTermsRead";
import { readSheets } from "../readSheets";

const DUE = functionDocs.find(({ id }) => id === "DUE")!;
const rows = [
  ["Piece", "Terms"],
  ["coat", "5 wd post wrap"],
  ["hat", null],
];
const loans = { name: "Loans", tables: [{ name: "Loans", row: 0, column: 0, rowCount: 3, columnCount: 2 }], rows };

async function call(texts: Readonly<Record<string, string>>, row = 1) {
  const { workbook } = await readSheets([loans]);
  const home = { sheetId: workbook.sheets[0]!.sheetId, row, column: 5 };
  return readCall(DUE, texts, { workbook, today: 46_086, home });
}

test("terms are said in plain words beside their argument, also before the rest is filled", async () => {
  const { readings, sentences } = await call({ terms: "3 wd after wrap" });
  expect(readings).toEqual({ terms: "Read as: 3 working days after the shoot." });
  expect(sentences).toEqual({});
});

test("terms taken from a cell are said as they stand in the row of the formula; of a blank cell nothing is said", async () => {
  expect((await call({ terms: "=Loans[@Terms]" })).readings).toEqual({
    terms: "Read as: 5 working days after the shoot.",
  });
  expect(await call({ terms: "=Loans[@Terms]" }, 2)).toMatchObject({ readings: {}, sentences: {} });
});

test("terms that are not understood are said at once, and can still be inserted", async () => {
  const { readings, sentences, unfinished } = await call({ out: "2026-03-02", terms: "soonish" });
  expect(readings).toEqual({});
  expect(sentences["terms"]).toMatch(/^terms: "soonish" in "soonish" is not understood; write for example "7 days"/);
  expect(unfinished).toBeNull();
});

test("the help shows ways of writing terms with what they are read as, and some that are refused", () => {
  const readings = Object.fromEntries(
    termsExamples.map((written) => {
      const read = sayTermsRead(written, "terms");
      return [written, read.ok ? read.value : read.problem.reason];
    }),
  );
  expect(readings).toEqual({
    "next working day": "1 working day",
    "48h": "2 days",
    "a fortnight": "14 days",
    "3 wd": "3 working days",
    "within 10 days of receipt": "10 days from the receipt",
    "wrap + 2": "2 days after the shoot",
    "5 biz days post-shoot": "5 working days after the shoot",
    "COB Friday": "first Friday after collection",
    "Mon after wrap": "first Monday after the shoot",
    EOM: "end of the month",
    "by 5 Mar 2026": "by 2026-03-05",
    "3 jours ouvrés après le tournage": "3 working days after the shoot",
    "entro 7 giorni": "7 days",
    "3 días hábiles": "3 working days",
    "14 Tage nach Kauf": "14 days from the receipt",
    "3-5 days": "terms-ambiguous",
    "next Friday": "terms-ambiguous",
    "as agreed": "terms-not-understood",
  });
});
