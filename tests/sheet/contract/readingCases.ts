import type { ContractCase } from "./contractCase";
import { same, must, refused, cellOf, formulaOf, read, edit, until } from "./contractSteps";

/** What a port promises about reading, and about going to a cell. */
export const readingCases: readonly ContractCase[] = [
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
    title: "reads rows that are hidden, as by a filter, and writes to them",
    needs: ["hideRows"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract hidden rows");
      for (const row of [0, 1, 2, 3]) await probe.type(id, row, 0, `row ${row}`);
      await probe.hideRows?.(id, 1, 2);
      const held = async () => [0, 1, 2, 3].map(async (row) => cellOf(await read(port, id), row, 0));
      same(await Promise.all(await held()), ["row 0", "row 1", "row 2", "row 3"], "every row is read");
      const receipt = must(await port.write("Fill", [edit(id, 2, 0, "row 2", "mended")]), "writing");
      same(cellOf(await read(port, id), 2, 0), "mended", "the hidden cell");
      must(await port.restore(receipt), "restoring");
      same(await Promise.all(await held()), ["row 0", "row 1", "row 2", "row 3"], "every row is as before");
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
    title: "tells the block of cells that is selected",
    needs: ["select"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract selection");
      await probe.type(id, 2, 1, "there");
      await probe.select?.(id, 2, 1, 3, 2);
      const area = { sheetId: id, row: 2, column: 1, rowCount: 3, columnCount: 2 };
      same(must(await port.selection(), "reading the selection"), area, "the selection");
    },
  },
];
