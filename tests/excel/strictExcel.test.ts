import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { excelMembers } from "./excelMembers";
import { createFakeWorkbook } from "./fakeWorkbook";
import { installStrictExcel } from "./strictExcel";
import { strictProbe } from "./strictProbe";

/** A host with ExcelApi 1.11 and one sheet; answers the sheet's id. */
async function started(): Promise<string> {
  const workbook = createFakeWorkbook();
  return strictProbe(workbook, installStrictExcel(workbook, "1.11")).addSheet("One");
}

afterEach(() => {
  for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
});

test("a property that was not loaded cannot be read", async () => {
  const sheetId = await started();
  await expect(
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem(sheetId).load("id");
      await context.sync();
      return [sheet.id, sheet.name];
    }),
  ).rejects.toThrow("Worksheet.name is read before it was loaded and synced");
});

test("a property that was loaded but not synced cannot be read", async () => {
  const sheetId = await started();
  await expect(
    Excel.run((context) => Promise.resolve(context.workbook.worksheets.getItem(sheetId).load("id").id)),
  ).rejects.toThrow("Worksheet.id is read before it was loaded and synced");
});

test("nothing can be used after its run", async () => {
  const sheetId = await started();
  const sheet = await Excel.run((context) => Promise.resolve(context.workbook.worksheets.getItem(sheetId)));
  expect(() => sheet.load("name")).toThrow("after its run");
  expect(() => sheet.activate()).toThrow("after its run");
});

test("a member that Excel does not have is refused, also in a path to load", async () => {
  await started();
  await expect(
    Excel.run((context) => Promise.resolve((context.workbook as unknown as { sheets: unknown }).sheets)),
  ).rejects.toThrow("Workbook has no sheets");
  await expect(
    Excel.run((context) => Promise.resolve(context.workbook.worksheets.load("items/title"))),
  ).rejects.toThrow("Worksheet has no title");
});

test("a member of a newer requirement set is refused", async () => {
  const sheetId = await started();
  await expect(
    Excel.run((context) =>
      Promise.resolve(context.workbook.worksheets.getItem(sheetId).getRangeByIndexes(0, 0, 1, 1).load("hasSpill")),
    ),
  ).rejects.toThrow("Range.hasSpill needs ExcelApi 1.12");
});

test("a null object has no properties", async () => {
  await started();
  await expect(
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject("none").load("name");
      await context.sync();
      return [sheet.isNullObject, sheet.name];
    }),
  ).rejects.toThrow("Worksheet.name of a null object");
});

/**
 * The vendor's published type declarations (the package @types/office-js), read as text: the class's body and, before
 * each member, the requirement set that brings it.
 */
const declarations = readFileSync(createRequire(__filename).resolve("@types/office-js/index.d.ts"), "utf8");
const excelNamespace = declarations.slice(declarations.indexOf("\ndeclare namespace Excel {"));

test.each(Object.entries(excelMembers))(
  "the fake's %s has only what the published declarations give it",
  (kind, members) => {
    const start = excelNamespace.search(new RegExp(`\\n    class ${kind}\\b`));
    expect(start).toBeGreaterThan(0);
    const body = excelNamespace.slice(start, excelNamespace.indexOf("\n    }\n", start));
    for (const [member, version] of Object.entries(members)) {
      const declared = new RegExp(`\\n {8}(?:readonly )?${member}\\b`).exec(body);
      expect([kind, member, declared !== null]).toEqual([kind, member, true]);
      if (version === "") continue;
      const before = body.slice(0, declared?.index);
      const remarks = before.slice(before.lastIndexOf("/**"));
      expect([kind, member, /Api set: ExcelApi ([\d.]+)/.exec(remarks)?.[1]]).toEqual([kind, member, version]);
    }
  },
);
