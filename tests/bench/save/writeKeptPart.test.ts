import { strFromU8, strToU8 } from "fflate";
import { writeKeptPart } from "../../../src/bench/save/writeKeptPart";

const TYPES = "[Content_Types].xml";
const RELATIONSHIPS = "xl/_rels/workbook.xml.rels";
const workbook = {
  [TYPES]: strToU8("<Types></Types>"),
  [RELATIONSHIPS]: strToU8("<Relationships></Relationships>"),
  "customXml/item1.xml": strToU8("<other/>"),
};
const kept = new Map([["ignored", "a < b"]]);
const text = (parts: Readonly<Record<string, Uint8Array>>, path: string) => strFromU8(parts[path] ?? new Uint8Array());

test("a new part stands beside those of others, with its properties and its place in the lists (ISO/IEC 29500-1 15.2.5, 15.2.6)", () => {
  const parts = writeKeptPart(workbook, kept);
  expect(text(parts, "customXml/item1.xml")).toBe("<other/>");
  expect(text(parts, "customXml/item2.xml")).toContain('<text key="ignored">a &lt; b</text>');
  expect(text(parts, RELATIONSHIPS)).toContain('Target="../customXml/item2.xml"');
  expect(text(parts, "customXml/_rels/item2.xml.rels")).toContain('Target="itemProps2.xml"');
  expect(text(parts, "customXml/itemProps2.xml")).toMatch(
    /<ds:datastoreItem ds:itemID="\{[0-9A-F-]{36}\}" xmlns:ds="http:\/\/schemas\.openxmlformats\.org\/officeDocument\/2006\/customXml">/,
  );
  expect(text(parts, TYPES)).toContain('PartName="/customXml/itemProps2.xml"');
});

test("a part that is there is written anew and keeps what stands beside it", () => {
  const first = writeKeptPart(workbook, kept);
  const again = writeKeptPart(first, new Map([["ignored", "c"]]));
  expect(Object.keys(again)).toEqual(Object.keys(first));
  expect(text(again, TYPES)).toBe(text(first, TYPES));
  expect(text(again, "customXml/item2.xml")).toContain('<text key="ignored">c</text>');
});

test("where nothing is kept nothing is written", () => {
  expect(writeKeptPart(workbook, new Map())).toBe(workbook);
});
