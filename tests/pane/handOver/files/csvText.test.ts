import fc from "fast-check";
import { csvText } from "../../../../src/pane/handOver/files/csvText";

/** RFC 4180, read back by its own grammar, one character after the other, for one sign between cells. */
function cellsOf(csv: string, separator: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = "";
  let isQuoted = false;
  for (let at = csv.startsWith("\uFEFF") ? 1 : 0; at < csv.length; at++) {
    const sign = csv[at]!;
    if (isQuoted) {
      if (sign !== '"') cell += sign;
      else if (csv[at + 1] === '"') cell += csv[++at]!;
      else isQuoted = false;
    } else if (sign === '"' && cell === "") isQuoted = true;
    else if (sign === separator) {
      row.push(cell);
      cell = "";
    } else if (sign === "\r" && csv[at + 1] === "\n") {
      rows.push([...row, cell]);
      row = [];
      cell = "";
      at++;
    } else cell += sign;
  }
  return rows;
}

const hostile = fc
  .array(
    fc.oneof(
      fc.string(),
      fc.constantFrom("=", "+", "-", "@", "\t", "\r", "\n", '"', ",", ";", " ", "=cmd|' /C calc'!A0"),
    ),
    {
      maxLength: 8,
    },
  )
  .map((parts) => parts.join(""));
/** What a spreadsheet would work out, also in its full-width forms and behind spaces. */
const isFormula = (text: string): boolean => /^[\s]*[=+\-@＝＋－＠]|^[\t\r\n]/.test(text);

test("numbers stay numbers, blanks stay blank, and texts come back as they were", () => {
  expect(
    csvText({
      headings: ["Piece", "Value"],
      rows: [
        ["coat, camel", -12.5],
        ['the "big" one', null],
      ],
    }),
  ).toBe('\uFEFFPiece,Value\r\n"coat, camel",-12.5\r\n"the ""big"" one",\r\n');
});

test.each(["=1+1", "+44 20", "-5", "@home", "\tx", "\rx", " =1+1", "＝1+1"])(
  "%j gets an apostrophe and is no formula",
  (text) => {
    expect(cellsOf(csvText({ headings: ["Note"], rows: [[text]] }), ",")[1]).toEqual([`'${text}`]);
  },
);

test("a text that a sign of another country would part begins no formula there either", () => {
  expect(csvText({ headings: ["Note"], rows: [["a;=1+1"]] })).toBe(`\uFEFFNote\r\n"a;'=1+1"\r\n`);
});

test("no cell is a formula however a spreadsheet parts the file, and read by RFC 4180 it holds what was given", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(hostile, hostile), { maxLength: 5 }), (rows) => {
      const csv = csvText({ headings: ["One", "Two"], rows });
      const read = cellsOf(csv, ",");
      expect(read).toHaveLength(rows.length + 1);
      for (const [at, row] of rows.entries()) {
        const cells = read[at + 1]!;
        expect(cells).toHaveLength(2);
        for (const [column, cell] of cells.entries()) {
          expect(isFormula(cell)).toBe(false);
          const bare = (text: string): string => text.replaceAll("'", "").replace(/[^\P{Cc}\t\r\n]/gu, "");
          expect(bare(cell)).toBe(bare(row[column]!));
        }
      }
      for (const separator of [";", "\t"])
        for (const cells of cellsOf(csv, separator)) {
          // Torn apart at the wrong sign a cell may begin with a line end; what is worked out must not follow it.
          expect(cells.filter((cell) => isFormula(cell.trim()))).toEqual([]);
        }
    }),
    { numRuns: 500 },
  );
});

test("a number that is none leaves its cell blank", () => {
  expect(csvText({ headings: ["Value"], rows: [[Number.NaN], [Infinity], [0]] })).toBe("\uFEFFValue\r\n\r\n\r\n0\r\n");
});
