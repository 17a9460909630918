import { strFromU8, zipSync } from "fflate";
import { keptPartPath } from "../../src/bench/save/keptPartPath";
import { readKeptPart } from "../../src/bench/save/readKeptPart";
import { writeKeptPart } from "../../src/bench/save/writeKeptPart";
import { createExcelPort } from "../../src/excel/excelPort";
import { ignoredKey } from "../../src/pane/check/ignoredKey";
import { openBytes, openSample } from "../bench/save/openSample";
import { createFakeWorkbook, type FakeWorkbook } from "./fakeWorkbook";
import { installStrictExcel, type StrictExcel } from "./strictExcel";

const IGNORED = JSON.stringify([{ rule: "valueAsText", reason: 'the lender\'s "own" form,\n<kept> as £1 & up' }]);

let workbook: FakeWorkbook;
let excel: StrictExcel;
beforeEach(() => {
  workbook = createFakeWorkbook();
  excel = installStrictExcel(workbook, "1.9");
});
afterEach(() => excel.uninstall());

test("what the bench saved in a file, Excel shows", async () => {
  const sample = await openSample();
  const parts = writeKeptPart(sample.parts, new Map([[ignoredKey, IGNORED]]));
  const saved = await openBytes(zipSync({ ...parts }));
  workbook.customXmlParts.push({ id: "{1}", xml: strFromU8(saved.parts[keptPartPath(saved.parts) ?? ""]!) });
  expect(await createExcelPort().readKept(ignoredKey)).toEqual({ ok: true, value: IGNORED });
});

test("what Excel keeps, the bench shows when it opens the file", async () => {
  await createExcelPort().writeKept(ignoredKey, IGNORED);
  await createExcelPort().writeKept("columns", "{}");
  expect(workbook.customXmlParts).toHaveLength(1);
  const { parts } = await openSample();
  const xml = new TextEncoder().encode(workbook.customXmlParts[0]?.xml);
  const saved = await openBytes(zipSync({ ...parts, "customXml/item3.xml": xml }));
  expect([...readKeptPart(saved.parts)]).toEqual([
    [ignoredKey, IGNORED],
    ["columns", "{}"],
  ]);
});

test("texts kept at the same moment are all kept", async () => {
  const port = createExcelPort();
  await Promise.all(["one", "two", "three"].map((key) => port.writeKept(key, `text ${key}`)));
  for (const key of ["one", "two", "three"]) {
    expect(await port.readKept(key)).toEqual({ ok: true, value: `text ${key}` });
  }
});

test("parts of others stay as they are, and several of ours become one", async () => {
  const [other, ours] = [
    '<a xmlns="urn:someone">x</a>',
    (text: string) => `<kept xmlns="urn:tackstitch:kept">${text}</kept>`,
  ];
  workbook.customXmlParts.push(
    { id: "{1}", xml: other },
    { id: "{2}", xml: ours('<text key="a">first</text>') },
    { id: "{3}", xml: ours('<text key="a">second</text><text key="b"/>') },
  );
  const port = createExcelPort();
  expect(await port.readKept("a")).toEqual({ ok: true, value: "first" });
  expect(await port.readKept("b")).toEqual({ ok: true, value: "" });
  await port.writeKept("c", "third");
  expect(workbook.customXmlParts.map(({ id }) => id)).toEqual(["{1}", "{2}"]);
  expect(workbook.customXmlParts[0]?.xml).toBe(other);
  expect(await port.readKept("a")).toEqual({ ok: true, value: "first" });
  expect(await port.readKept("c")).toEqual({ ok: true, value: "third" });
});
