import { sayProblem } from "../../src/domain/wording";
import { createExcelPort } from "../../src/excel/excelPort";
import type { FakePicture } from "./fakeWorkbook";
import { createFakeWorkbook } from "./fakeWorkbook";
import { installStrictExcel } from "./strictExcel";
import { strictProbe } from "./strictProbe";

function started(excelApi = "1.20") {
  const workbook = createFakeWorkbook();
  const excel = installStrictExcel(workbook, excelApi);
  return { workbook, excel, probe: strictProbe(workbook, excel), port: createExcelPort() };
}

const picture = (change: Partial<FakePicture>): FakePicture => ({
  id: "{1}",
  name: "Picture 1",
  type: "Image",
  visible: true,
  row: 0,
  column: 0,
  rowCount: 1,
  drawn: "AA==",
  ...change,
});

afterEach(() => {
  for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
});

test("shapes that are no pictures, hidden ones and ones pressed flat by hidden rows are not told", async () => {
  const { workbook, probe, port } = started();
  await probe.addSheet("Looks");
  workbook.sheets[0]?.pictures.push(
    picture({ id: "{a}", type: "GeometricShape" }),
    picture({ id: "{b}", visible: false }),
    picture({ id: "{c}", rowCount: 0 }),
    picture({ id: "{d}", row: 4, column: 2 }),
  );
  const listed = await port.listPictures();
  expect(listed.ok && listed.value.map(({ at }) => at)).toEqual([
    { sheetId: workbook.sheets[0]?.id, row: 4, column: 2 },
  ]);
});

test("all pictures are listed in three syncs and small ones shown in three, however many there are", async () => {
  const { excel, probe, port } = started();
  for (const name of ["One", "Two"]) {
    const id = await probe.addSheet(name);
    for (let row = 0; row < 25; row++) await probe.addPicture(id, row, 0, { name: `${row}`, drawn: "AA==" });
  }
  excel.syncs = 0;
  const listed = await port.listPictures();
  expect(excel.syncs).toBe(3);
  excel.syncs = 0;
  const shown = await port.showPictures(listed.ok ? listed.value.map(({ key }) => key) : []);
  expect([shown.ok && shown.value.size, excel.syncs]).toEqual([50, 3]);
});

test("large pictures come a few at a time, since one answer holds at most 5 MB", async () => {
  const { excel, probe, port } = started();
  const id = await probe.addSheet("Looks");
  // 48 by 6,000 points are 512,000 pixels, about 2 million characters each.
  for (let index = 0; index < 4; index++)
    await probe.addPicture(id, index * 400, 0, { name: `${index}`, drawn: "AA==", rowCount: 400 });
  const listed = await port.listPictures();
  excel.syncs = 0;
  const shown = await port.showPictures(listed.ok ? listed.value.map(({ key }) => key) : []);
  expect([shown.ok && shown.value.size, excel.syncs]).toEqual([4, 2 + 4]);
});

test("a picture that was made larger has another key, since it is drawn as large as it is shown", async () => {
  const { workbook, probe, port } = started();
  await probe.addSheet("Looks");
  const sheet = workbook.sheets[0];
  sheet?.pictures.push(picture({}));
  const before = await port.listPictures();
  sheet?.pictures.splice(0, 1, picture({ rowCount: 3 }));
  const after = await port.listPictures();
  const keys = [before, after].map((listed) => listed.ok && listed.value[0]?.key);
  expect(keys[0]).not.toBe(keys[1]);
});

test("an Excel that shows an add-in no pictures says so, and what to do", async () => {
  const { probe, port } = started("1.8");
  await probe.addSheet("Looks");
  const listed = await port.listPictures();
  expect(!listed.ok && sayProblem(listed.problem)).toBe(
    "It was not possible to see the pictures on the sheets (this Excel shows an add-in no pictures); choose the picture files instead.",
  );
});
