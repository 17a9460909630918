import { createExcelPort } from "../../src/excel/excelPort";
import { sayProblem } from "../../src/domain/wording";
import { createFakeWorkbook } from "./fakeWorkbook";
import { installStrictExcel } from "./strictExcel";
import { strictProbe } from "./strictProbe";

/** A host with ExcelApi 1.20, its user, and the port over it. */
function started() {
  const workbook = createFakeWorkbook();
  const excel = installStrictExcel(workbook, "1.20");
  const probe = strictProbe(workbook, excel);
  async function filledSheet(name: string, rowCount: number): Promise<string> {
    const id = await probe.addSheet(name);
    for (let row = 0; row < rowCount; row++) {
      await probe.type(id, row, 0, row);
      await probe.type(id, row, 1, `=A${row + 1}*2`);
    }
    excel.syncs = 0;
    return id;
  }
  return { workbook, excel, probe, port: createExcelPort(), filledSheet };
}

afterEach(() => {
  for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
});

test("a sheet without tables is read in one sync, one with tables in two", async () => {
  const { excel, probe, port, filledSheet } = started();
  const id = await filledSheet("Pieces", 3);
  await port.readSheet(id);
  expect(excel.syncs).toBe(1);
  await probe.addTable(id, "Pieces", 0, 0, 3, 2);
  await port.readSheet(id);
  expect(excel.syncs).toBe(3);
});

test("a workbook of twelve sheets and a table is read in two syncs", async () => {
  const { workbook, excel, probe, port, filledSheet } = started();
  for (let index = 0; index < 12; index++) await filledSheet(`Sheet ${index}`, 2);
  await probe.addTable(workbook.sheets[4]?.id ?? "", "Looks", 0, 0, 2, 2);
  const read = await port.readWorkbook();
  expect(excel.syncs).toBe(2);
  expect(read.ok && read.value.sheets.map((sheet) => sheet.values.length)).toEqual(Array(12).fill(2));
});

test("a step over two sheets is written in three syncs, of which one changes cells", async () => {
  const { excel, port, filledSheet } = started();
  const [one, two] = [await filledSheet("One", 1), await filledSheet("Two", 1)];
  const at = (sheetId: string, row: number) => ({ at: { sheetId, row, column: 4 }, expected: null, value: row });
  const written = await port.write("Fill", [at(one, 0), at(two, 0), at(one, 5)]);
  expect([written.ok, excel.syncs]).toEqual([true, 3]);
  excel.undo();
  const read = await port.readWorkbook();
  expect(
    read.ok && read.value.sheets.flatMap((sheet) => sheet.values.flat().filter((cell) => cell !== null)),
  ).toHaveLength(4);
});

test("a sheet too large for one answer is read in slices and comes out the same", async () => {
  const { excel, probe, port, filledSheet } = started();
  const id = await filledSheet("Large", 60);
  await probe.addTable(id, "Large", 0, 0, 60, 2);
  const whole = await port.readSheet(id);
  const book = await port.readWorkbook();
  excel.answersToRefuse = 1;
  expect(await port.readSheet(id)).toEqual(whole);
  excel.answersToRefuse = 1;
  expect(await port.readWorkbook()).toEqual(book);
  expect(excel.answersToRefuse).toBe(0);
  excel.answersToRefuse = 2;
  const refused = await port.readSheet(id);
  expect(!refused.ok && refused.problem.reason).toBe("host-refused");
});

test("a 1904 workbook is told by what its own DATE function gives", async () => {
  const { workbook, port } = started();
  workbook.is1904 = true;
  const read = await port.readWorkbook();
  expect(read.ok && read.value.dateSystem).toBe(1904);
});

test("a writing that fails half-way is taken back before the problem is told", async () => {
  const { excel, probe, port } = started();
  const id = await probe.addSheet("Half");
  await probe.type(id, 0, 0, "stays");
  await probe.setFormat(id, 4, 4, "0.0");
  await probe.type(id, 4, 4, 7);
  excel.writesBeforeFailure = 2;
  const written = await port.write("Mend", [
    { at: { sheetId: id, row: 0, column: 0 }, expected: "stays", value: "written" },
    { at: { sheetId: id, row: 2, column: 2 }, expected: null, value: 1 },
    { at: { sheetId: id, row: 4, column: 4 }, expected: 7, value: 8, numberFormat: "yyyy-mm-dd" },
  ]);
  expect(written.ok).toBe(false);
  expect(!written.ok && sayProblem(written.problem)).toMatch(
    /^It was not possible to write to the sheet \(GeneralException.*\); try again\.$/,
  );
  const read = await port.readSheet(id);
  expect(read.ok && read.value.values.flat().filter((cell) => cell !== null)).toEqual(["stays", 7]);
  expect(await probe.formatOf(id, 4, 4)).toBe("0.0");
});

test("a cell that shows part of a spilled result is refused by name, blank or not", async () => {
  const { probe, port } = started();
  const id = await probe.addSheet("Spill");
  await probe.type(id, 0, 0, "=SEQUENCE(3)");
  const written = await port.write("Fill", [{ at: { sheetId: id, row: 2, column: 0 }, expected: 3, value: 4 }]);
  expect(!written.ok && written.problem).toEqual({ reason: "cells-spilled", facts: { sheet: "Spill", cells: "A3" } });
  const anchor = { at: { sheetId: id, row: 0, column: 0 }, expected: 1, expectedFormula: "=SEQUENCE(3)", value: 4 };
  expect((await port.write("Fill", [anchor])).ok).toBe(true);
});

test("what Excel refuses is one sentence, and nothing rejects", async () => {
  const { port } = started();
  Object.assign(Excel, {
    run: () =>
      Promise.reject(Object.assign(new Error("Excel is in edit mode."), { code: "InvalidOperationInCellEditMode" })),
  });
  const read = await port.readWorkbook();
  expect(!read.ok && sayProblem(read.problem)).toBe(
    "It was not possible to read the workbook (InvalidOperationInCellEditMode: Excel is in edit mode); finish typing in the cell, then try again.",
  );
});

test("outside Excel every call answers a problem instead of rejecting", async () => {
  const { excel, port } = started();
  excel.uninstall();
  const answers = await Promise.all([
    port.readWorkbook(),
    port.readSheet("x"),
    port.goTo({ sheetId: "x", row: 0, column: 0 }),
    port.activeCell(),
    port.selection(),
    port.write("Fill", [{ at: { sheetId: "x", row: 0, column: 0 }, expected: null, value: 1 }]),
    port.readKept("x"),
    port.writeKept("x", "y"),
    port.listPictures(),
    port.showPictures(["x"]),
  ]);
  expect(answers.map((answer) => answer.ok)).toEqual(answers.map(() => false));
});

test("listening stops in the context that began it, and every handler goes", async () => {
  const { workbook, port } = started();
  const stop = port.onChange(() => undefined);
  await new Promise((resolve) => setTimeout(resolve, 10));
  expect([...workbook.handlers].map((handler) => handler.name).sort()).toEqual(
    "onAdded onCalculated onChanged onColumnSorted onDeleted onNameChanged onProtectionChanged onRowSorted onVisibilityChanged".split(
      " ",
    ),
  );
  stop();
  await new Promise((resolve) => setTimeout(resolve, 10));
  expect([...workbook.handlers]).toEqual([]);
});
