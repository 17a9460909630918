import { sayProblem } from "../../src/domain/wording";
import type { Outcome } from "../../src/domain/outcome";
import type { Cell } from "../../src/sheet/cell";
import type { CellEdit } from "../../src/sheet/cellEdit";
import type { SheetChange, SheetPort } from "../../src/sheet/SheetPort";
import type { SheetSnapshot } from "../../src/sheet/sheetSnapshot";

/** Acts as the user behind the port's back. Rows and columns count from 0. */
export interface Probe {
  /** Types into a cell; text that starts with "=" is a formula, text that starts with ' stays text, null clears the cell. */
  type(sheetId: string, row: number, column: number, typed: number | string | boolean | null): Promise<void>;
  /** Adds a visible, empty sheet and answers its id. The sheets of earlier cases may still be there. */
  addSheet(name: string): Promise<string>;
  deleteSheet(sheetId: string): Promise<void>;
  /** The number format of a cell; "General" where none was set. */
  formatOf(sheetId: string, row: number, column: number): Promise<string>;
  setFormat(sheetId: string, row: number, column: number, numberFormat: string): Promise<void>;
  hideSheet?(sheetId: string): Promise<void>;
  protectSheet?(sheetId: string): Promise<void>;
  /** Makes the area, heading row included, a table of the host. */
  addTable?(
    sheetId: string,
    name: string,
    row: number,
    column: number,
    rowCount: number,
    columnCount: number,
  ): Promise<void>;
  merge?(sheetId: string, row: number, column: number, rowCount: number, columnCount: number): Promise<void>;
  /** Undoes the last step. Left out where the host's undo does not reach the port's writes. */
  undo?(): Promise<void>;
}

/** One promise of the port. A case whose `needs` the probe lacks cannot run there; the runner must say so. */
export interface ContractCase {
  readonly title: string;
  readonly needs?: readonly (keyof Probe)[];
  run(port: SheetPort, probe: Probe): Promise<void>;
}

function same(actual: unknown, expected: unknown, what: string): void {
  const [a, b] = [JSON.stringify(actual), JSON.stringify(expected)];
  if (a !== b) throw new Error(`${what}: got ${a}, expected ${b}`);
}

function must<T>(outcome: Outcome<T>, what: string): T {
  if (!outcome.ok) throw new Error(`${what}: ${sayProblem(outcome.problem)}`);
  return outcome.value;
}

function refused(outcome: Outcome<unknown>, reason: string, part = ""): void {
  if (outcome.ok) throw new Error(`was not refused, expected ${reason}`);
  same(outcome.problem.reason, reason, "the reason of the refusal");
  const sentence = sayProblem(outcome.problem);
  if (!sentence.includes(part)) throw new Error(`the sentence does not name ${part}: ${sentence}`);
}

/** What stands in a cell of a snapshot; outside the used range it is blank. */
function cellOf(sheet: SheetSnapshot, row: number, column: number): Cell {
  return sheet.values[row - sheet.firstRow]?.[column - sheet.firstColumn] ?? null;
}

function formulaOf(sheet: SheetSnapshot, row: number, column: number): string | null {
  return sheet.formulas[row - sheet.firstRow]?.[column - sheet.firstColumn] ?? null;
}

async function read(port: SheetPort, sheetId: string): Promise<SheetSnapshot> {
  return must(await port.readSheet(sheetId), "reading the sheet");
}

function edit(
  sheetId: string,
  row: number,
  column: number,
  expected: Cell,
  value: Cell,
  more: Partial<CellEdit> = {},
): CellEdit {
  return { at: { sheetId, row, column }, expected, value, ...more };
}

async function until(what: string, holds: () => boolean | Promise<boolean>, milliseconds = 5000): Promise<void> {
  for (let waited = 0; waited < milliseconds; waited += 20) {
    if (await holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`waited ${milliseconds} ms in vain: ${what}`);
}

/**
 * What every SheetPort promises, whichever host holds the workbook.
 *
 * Plain throws and no test runner, so that the same list runs in a browser page. Each case works on sheets of
 * its own, so that one workbook can serve them all; names are prefixed "Contract".
 */
export const sheetPortContract: readonly ContractCase[] = [
  {
    title: "reads numbers, text, booleans and blanks as they stand",
    async run(port, probe) {
      const id = await probe.addSheet("Contract values");
      await probe.type(id, 0, 0, 46086);
      await probe.type(id, 0, 1, "Maison Orla");
      await probe.type(id, 0, 2, true);
      await probe.type(id, 1, 2, 0.25);
      const sheet = await read(port, id);
      same(sheet.name, "Contract values", "the name");
      same(sheet.sheetId, id, "the id");
      same(cellOf(sheet, 0, 0), 46086, "a number");
      same(cellOf(sheet, 0, 1), "Maison Orla", "a text");
      same(cellOf(sheet, 0, 2), true, "a boolean");
      same(cellOf(sheet, 1, 0), null, "a blank");
      same(cellOf(sheet, 1, 2), 0.25, "a fraction");
      same(
        sheet.formulas.flat().filter((formula) => formula !== null),
        [],
        "no formulas",
      );
    },
  },
  {
    title: "keeps digits that were typed as text as text",
    async run(port, probe) {
      const id = await probe.addSheet("Contract text digits");
      await probe.type(id, 0, 0, "'007");
      same(cellOf(await read(port, id), 0, 0), "007", "text of digits");
    },
  },
  {
    title: "says where the used range begins when it does not begin at A1",
    async run(port, probe) {
      const id = await probe.addSheet("Contract offset");
      await probe.type(id, 4, 2, "corner");
      await probe.type(id, 6, 3, 9);
      const sheet = await read(port, id);
      same(cellOf(sheet, 4, 2), "corner", "the first cell, by its place on the sheet");
      same(cellOf(sheet, 6, 3), 9, "the last cell, by its place on the sheet");
      same(sheet.values.length, sheet.formulas.length, "values and formulas have as many rows");
      same(
        sheet.values.map((row) => row.length),
        sheet.formulas.map((row) => row.length),
        "and as many columns",
      );
    },
  },
  {
    title: "reads an empty sheet as no rows",
    async run(port, probe) {
      const id = await probe.addSheet("Contract empty");
      const sheet = await read(port, id);
      same(
        sheet.values.flat().filter((cell) => cell !== null),
        [],
        "no values",
      );
      same(sheet.tables, [], "no tables");
      same([sheet.visible, sheet.isProtected], [true, false], "visible and open");
    },
  },
  {
    title: "reads the result and the formula of a cell, and an error as an error",
    async run(port, probe) {
      const id = await probe.addSheet("Contract formulas");
      await probe.type(id, 0, 0, 5);
      await probe.type(id, 0, 1, "=A1*2");
      await probe.type(id, 0, 2, "=1/0");
      await probe.type(id, 0, 3, "=NA()");
      await until("the formulas are calculated", async () => cellOf(await read(port, id), 0, 1) === 10);
      const sheet = await read(port, id);
      same(formulaOf(sheet, 0, 0), null, "a typed number has no formula");
      same(formulaOf(sheet, 0, 1), "=A1*2", "the formula");
      same(cellOf(sheet, 0, 2), { error: "#DIV/0!" }, "a division by nought");
      same(cellOf(sheet, 0, 3), { error: "#N/A" }, "not available");
    },
  },
  {
    title: "reads a formula that gives an empty text as blank, with its formula",
    async run(port, probe) {
      const id = await probe.addSheet("Contract empty text");
      await probe.type(id, 0, 0, "Note");
      await probe.type(id, 1, 0, '=""');
      await until("the formula is there", async () => formulaOf(await read(port, id), 1, 0) !== null);
      same(cellOf(await read(port, id), 1, 0), null, "its value");
    },
  },
  {
    title: "reads every sheet of the workbook in sheet order, with the date system",
    async run(port, probe) {
      const first = await probe.addSheet("Contract one");
      const second = await probe.addSheet("Contract two");
      await probe.type(second, 0, 0, "here");
      const workbook = must(await port.readWorkbook(), "reading the workbook");
      const ids = workbook.sheets.map((sheet) => sheet.sheetId);
      if (ids.indexOf(first) < 0 || ids.indexOf(first) > ids.indexOf(second))
        throw new Error("the sheets are not in order");
      const found = workbook.sheets.find((sheet) => sheet.sheetId === second);
      same(found && cellOf(found, 0, 0), "here", "a cell of the second sheet");
      same(workbook.dateSystem, 1900, "the date system");
      same(typeof workbook.name, "string", "the workbook's name");
    },
  },
  {
    title: "names the host's tables and the area of each, heading row included",
    needs: ["addTable"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract tables");
      await probe.type(id, 2, 1, "Piece");
      await probe.type(id, 2, 2, "Lender");
      await probe.type(id, 3, 1, "Silk coat");
      await probe.addTable?.(id, "ContractPieces", 2, 1, 2, 2);
      const area = { name: "ContractPieces", row: 2, column: 1, rowCount: 2, columnCount: 2 };
      same((await read(port, id)).tables, [area], "the table, reading the sheet");
      const workbook = must(await port.readWorkbook(), "reading the workbook");
      same(workbook.sheets.find((sheet) => sheet.sheetId === id)?.tables, [area], "the table, reading the workbook");
    },
  },
  {
    title: "says that a sheet is hidden, and refuses to go there",
    needs: ["hideSheet"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract hidden");
      await probe.hideSheet?.(id);
      same((await read(port, id)).visible, false, "visible");
      refused(await port.goTo({ sheetId: id, row: 0, column: 0 }), "sheet-hidden", "Contract hidden");
    },
  },
  {
    title: "says that a sheet is gone instead of failing",
    async run(port, probe) {
      const id = await probe.addSheet("Contract gone");
      await probe.type(id, 0, 0, 1);
      await probe.deleteSheet(id);
      refused(await port.readSheet(id), "sheet-gone");
      refused(await port.goTo({ sheetId: id, row: 0, column: 0 }), "sheet-gone");
      refused(await port.write("Fill", [edit(id, 0, 0, 1, 2)]), "sheet-gone");
    },
  },
  {
    title: "goes to a cell and says that it is the active one",
    async run(port, probe) {
      const id = await probe.addSheet("Contract active");
      await probe.type(id, 7, 3, "there");
      must(await port.goTo({ sheetId: id, row: 7, column: 3 }), "going to D8");
      await until("the cell is active", async () => {
        const at = must(await port.activeCell(), "asking for the active cell");
        return at.sheetId === id && at.row === 7 && at.column === 3;
      });
    },
  },
  {
    title: "writes all the cells of a step, with their number formats, and answers what stood there",
    async run(port, probe) {
      const id = await probe.addSheet("Contract write");
      await probe.type(id, 0, 0, "5 Mar 2026 or so");
      const receipt = must(
        await port.write("Make it a date", [
          edit(id, 0, 0, "5 Mar 2026 or so", 46086, { numberFormat: "yyyy-mm-dd" }),
          edit(id, 1, 0, null, "tbc"),
          edit(id, 1, 1, null, true),
        ]),
        "writing",
      );
      const sheet = await read(port, id);
      same([cellOf(sheet, 0, 0), cellOf(sheet, 1, 0), cellOf(sheet, 1, 1)], [46086, "tbc", true], "the cells");
      same(await probe.formatOf(id, 0, 0), "yyyy-mm-dd", "the number format");
      same(receipt.label, "Make it a date", "the label");
      const values = receipt.prior.map((prior) => [prior.at.row, prior.at.column, prior.value]);
      same(
        values.sort(),
        [
          [0, 0, "5 Mar 2026 or so"],
          [1, 0, null],
          [1, 1, null],
        ],
        "what stood there",
      );
    },
  },
  {
    title: "writes text as text, even where the host would read it as a number, a date or a formula",
    async run(port, probe) {
      const id = await probe.addSheet("Contract literal");
      const texts = [
        "007",
        "2026-03-05",
        "5 Mar 2026",
        "=A1",
        "+44 20 7946 0000",
        "TRUE",
        "50%",
        "£1,250.00",
        "'quoted",
        "1/2",
      ];
      must(
        await port.write(
          "Fill",
          texts.map((text, row) => edit(id, row, 0, null, text)),
        ),
        "writing",
      );
      const sheet = await read(port, id);
      same(
        texts.map((_, row) => cellOf(sheet, row, 0)),
        texts,
        "the texts",
      );
      same(
        texts.map((_, row) => formulaOf(sheet, row, 0)),
        texts.map(() => null),
        "no formulas",
      );
    },
  },
  {
    title: "writes a number as a number into a cell that is formatted as text",
    async run(port, probe) {
      const id = await probe.addSheet("Contract text format");
      await probe.setFormat(id, 0, 0, "@");
      await probe.type(id, 0, 0, "'46086");
      must(await port.write("Make it a number", [edit(id, 0, 0, "46086", 46086)]), "writing");
      same(cellOf(await read(port, id), 0, 0), 46086, "the number");
    },
  },
  {
    title: "writes a formula that calculates",
    async run(port, probe) {
      const id = await probe.addSheet("Contract formula");
      await probe.type(id, 0, 0, 4);
      must(await port.write("Fill", [edit(id, 0, 1, null, null, { formula: "=A1*3" })]), "writing");
      await until("the formula is calculated", async () => cellOf(await read(port, id), 0, 1) === 12);
      same(formulaOf(await read(port, id), 0, 1), "=A1*3", "the formula");
    },
  },
  {
    title: "clears a cell when the value is null",
    async run(port, probe) {
      const id = await probe.addSheet("Contract clear");
      await probe.type(id, 0, 0, "x");
      await probe.type(id, 0, 1, "stays");
      must(await port.write("Clear", [edit(id, 0, 0, "x", null)]), "writing");
      const sheet = await read(port, id);
      same([cellOf(sheet, 0, 0), cellOf(sheet, 0, 1)], [null, "stays"], "the cells");
    },
  },
  {
    title: "writes nothing at all when one cell no longer holds what was expected, and names that cell",
    async run(port, probe) {
      const id = await probe.addSheet("Contract refuse");
      await probe.type(id, 0, 0, "a");
      await probe.type(id, 1, 1, "typed meanwhile");
      refused(await port.write("Fill", [edit(id, 0, 0, "a", "A"), edit(id, 1, 1, null, "B")]), "cells-changed", "B2");
      const sheet = await read(port, id);
      same([cellOf(sheet, 0, 0), cellOf(sheet, 1, 1)], ["a", "typed meanwhile"], "nothing was written");
    },
  },
  {
    title: "tells the number 1 from the text 1 and from TRUE when it compares",
    async run(port, probe) {
      const id = await probe.addSheet("Contract kinds");
      await probe.type(id, 0, 0, "'1");
      await probe.type(id, 0, 1, true);
      refused(await port.write("Fill", [edit(id, 0, 0, 1, 2)]), "cells-changed", "A1");
      refused(await port.write("Fill", [edit(id, 0, 1, 1, 2)]), "cells-changed", "B1");
    },
  },
  {
    title: "never overwrites a formula unasked, not even one that shows blank",
    async run(port, probe) {
      const id = await probe.addSheet("Contract keep formula");
      await probe.type(id, 0, 0, '=""');
      await probe.type(id, 0, 1, "=1+1");
      await until("the formulas are there", async () => cellOf(await read(port, id), 0, 1) === 2);
      refused(await port.write("Fill", [edit(id, 0, 0, null, 1)]), "cells-changed", "A1");
      refused(await port.write("Fill", [edit(id, 0, 1, 2, 3)]), "cells-changed", "B1");
      must(await port.write("Fill", [edit(id, 0, 1, 2, 3, { expectedFormula: "=1+1" })]), "writing, asked");
      same(cellOf(await read(port, id), 0, 1), 3, "the cell");
    },
  },
  {
    title: "refuses a step that names one cell twice",
    async run(port, probe) {
      const id = await probe.addSheet("Contract twice");
      refused(await port.write("Fill", [edit(id, 2, 2, null, 1), edit(id, 2, 2, null, 2)]), "cells-named-twice", "C3");
      same(cellOf(await read(port, id), 2, 2), null, "nothing was written");
    },
  },
  {
    title: "refuses a protected sheet by name and writes nothing on the others",
    needs: ["protectSheet"],
    async run(port, probe) {
      const open = await probe.addSheet("Contract open");
      const closed = await probe.addSheet("Contract protected");
      await probe.protectSheet?.(closed);
      same((await read(port, closed)).isProtected, true, "protected");
      const step = [edit(open, 0, 0, null, 1), edit(closed, 0, 0, null, 1)];
      refused(await port.write("Fill", step), "sheet-protected", "Contract protected");
      same(cellOf(await read(port, open), 0, 0), null, "nothing was written on the open sheet");
    },
  },
  {
    title: "refuses a cell inside a merged block, but not its first cell",
    needs: ["merge"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract merged");
      await probe.type(id, 0, 0, "Job");
      await probe.merge?.(id, 0, 0, 1, 3);
      refused(await port.write("Fill", [edit(id, 0, 1, null, "lost")]), "cells-merged", "B1");
      must(await port.write("Fill", [edit(id, 0, 0, "Job", "Spring job")]), "writing the first cell");
      same(cellOf(await read(port, id), 0, 0), "Spring job", "the first cell");
    },
  },
  {
    title: "puts a step back: values, texts, formulas, blanks and number formats",
    async run(port, probe) {
      const id = await probe.addSheet("Contract restore");
      await probe.setFormat(id, 0, 0, "@");
      await probe.type(id, 0, 0, "'03/04/26");
      await probe.type(id, 1, 0, "=1+1");
      await until("the formula is calculated", async () => cellOf(await read(port, id), 1, 0) === 2);
      const receipt = must(
        await port.write("Mend", [
          edit(id, 0, 0, "03/04/26", 46115, { numberFormat: "yyyy-mm-dd" }),
          edit(id, 1, 0, 2, 5, { expectedFormula: "=1+1" }),
          edit(id, 2, 0, null, null, { formula: "=A2*2" }),
          edit(id, 3, 0, null, "note"),
        ]),
        "writing",
      );
      must(await port.restore(receipt), "restoring");
      await until("the formula is calculated again", async () => cellOf(await read(port, id), 1, 0) === 2);
      const sheet = await read(port, id);
      same(
        [0, 1, 2, 3].map((row) => cellOf(sheet, row, 0)),
        ["03/04/26", 2, null, null],
        "the cells",
      );
      same(
        [0, 1, 2, 3].map((row) => formulaOf(sheet, row, 0)),
        [null, "=1+1", null, null],
        "the formulas",
      );
      same(await probe.formatOf(id, 0, 0), "@", "the number format");
    },
  },
  {
    title: "can put the putting back back",
    async run(port, probe) {
      const id = await probe.addSheet("Contract restore twice");
      await probe.type(id, 0, 0, "before");
      const receipt = must(await port.write("Mend", [edit(id, 0, 0, "before", "after")]), "writing");
      const back = must(await port.restore(receipt), "restoring");
      must(await port.restore(back), "restoring the restoring");
      same(cellOf(await read(port, id), 0, 0), "after", "the cell");
    },
  },
  {
    title: "does not restore over what somebody typed since, and names the cell",
    async run(port, probe) {
      const id = await probe.addSheet("Contract typed since");
      await probe.type(id, 0, 0, "before");
      await probe.type(id, 1, 0, "before too");
      const step = [edit(id, 0, 0, "before", "after"), edit(id, 1, 0, "before too", "after too")];
      const receipt = must(await port.write("Mend", step), "writing");
      await probe.type(id, 1, 0, "mine");
      refused(await port.restore(receipt), "cells-changed", "A2");
      const sheet = await read(port, id);
      same([cellOf(sheet, 0, 0), cellOf(sheet, 1, 0)], ["after", "mine"], "nothing was put back");
    },
  },
  {
    title: "restores a formula although its result was recalculated since",
    async run(port, probe) {
      const id = await probe.addSheet("Contract recalculated");
      await probe.type(id, 0, 0, 1);
      const receipt = must(await port.write("Fill", [edit(id, 0, 1, null, null, { formula: "=A1*2" })]), "writing");
      await probe.type(id, 0, 0, 50);
      await until("the formula is calculated", async () => cellOf(await read(port, id), 0, 1) === 100);
      must(await port.restore(receipt), "restoring");
      same([cellOf(await read(port, id), 0, 1), formulaOf(await read(port, id), 0, 1)], [null, null], "the cell");
    },
  },
  {
    title: "undoes a whole step at once",
    needs: ["undo"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract undo");
      await probe.type(id, 0, 0, "a");
      const step = [
        edit(id, 0, 0, "a", "A"),
        edit(id, 2, 0, null, 3, { numberFormat: "0.00" }),
        edit(id, 0, 2, null, "c"),
      ];
      must(await port.write("Fill", step), "writing");
      await probe.undo?.();
      await until("every cell is as before", async () => {
        const sheet = await read(port, id);
        return cellOf(sheet, 0, 0) === "a" && cellOf(sheet, 2, 0) === null && cellOf(sheet, 0, 2) === null;
      });
    },
  },
  {
    title: "keeps text in the workbook under a key, overwrites it, and knows no other key",
    async run(port) {
      const key = "contract.kept";
      const text = JSON.stringify({ columns: "value=Ins. amt", quote: "\"'<&é\u2028" });
      must(await port.writeKept(key, "first"), "keeping");
      must(await port.writeKept(key, text), "keeping again");
      same(must(await port.readKept(key), "reading what was kept"), text, "what was kept");
      same(must(await port.readKept("contract.never"), "reading an unknown key"), null, "an unknown key");
    },
  },
  {
    title: "tells of what the user types, where",
    async run(port, probe) {
      const id = await probe.addSheet("Contract listen");
      await probe.type(id, 0, 0, 1);
      await new Promise((resolve) => setTimeout(resolve, 400));
      const heard: SheetChange[] = [];
      const stop = port.onChange((changes) => heard.push(...changes));
      await new Promise((resolve) => setTimeout(resolve, 50));
      await probe.type(id, 3, 1, "typed");
      const covers = (change: SheetChange): boolean =>
        change.sheetId === id &&
        (change.area === null ||
          (change.area.row <= 3 &&
            3 < change.area.row + change.area.rowCount &&
            change.area.column <= 1 &&
            1 < change.area.column + change.area.columnCount));
      await until("the edit is told", () => heard.some(covers));
      stop();
      await new Promise((resolve) => setTimeout(resolve, 400));
      const count = heard.length;
      await probe.type(id, 4, 1, "unheard");
      await new Promise((resolve) => setTimeout(resolve, 400));
      same(heard.length, count, "nothing is told after stopping");
    },
  },
  {
    title: "tells of a sheet that was added and of one that was deleted",
    async run(port, probe) {
      const heard: SheetChange[] = [];
      const stop = port.onChange((changes) => heard.push(...changes));
      await new Promise((resolve) => setTimeout(resolve, 50));
      const id = await probe.addSheet("Contract added");
      await until("the new sheet is told", () => heard.some((change) => change.sheetsChanged));
      await new Promise((resolve) => setTimeout(resolve, 400));
      heard.length = 0;
      await probe.deleteSheet(id);
      await until("the deleted sheet is told", () => heard.some((change) => change.sheetsChanged));
      stop();
    },
  },
  {
    title: "tells of a step it wrote itself, so that the check runs again",
    async run(port, probe) {
      const id = await probe.addSheet("Contract own");
      await new Promise((resolve) => setTimeout(resolve, 400));
      const heard: SheetChange[] = [];
      const stop = port.onChange((changes) => heard.push(...changes));
      await new Promise((resolve) => setTimeout(resolve, 50));
      must(await port.write("Fill", [edit(id, 0, 0, null, 1)]), "writing");
      await until("the step is told", () => heard.some((change) => change.sheetId === id));
      stop();
    },
  },
];
