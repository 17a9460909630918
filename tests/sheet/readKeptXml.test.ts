import fc from "fast-check";
import { keptXml } from "../../src/sheet/keptXml";
import { readKeptXml } from "../../src/sheet/readKeptXml";

test("texts come back as they were kept, whatever stands in them", () => {
  const text = fc.string().map((any) => JSON.stringify(any));
  fc.assert(
    fc.property(fc.uniqueArray(fc.tuple(text, text), { selector: ([key]) => key }), (entries) => {
      expect([...readKeptXml(keptXml(new Map(entries)))]).toEqual(entries);
    }),
  );
});

test("white space is kept through an XML processor, which evens out what is not a reference (XML 1.0, 2.11 and 3.3.3)", () => {
  const xml = keptXml(new Map([["a\tb", "one\r\ntwo\nthree"]]));
  const body = xml.slice(xml.indexOf("\n") + 1);
  expect(body).not.toMatch(/[\t\r\n]/);
  expect(readKeptXml(xml).get("a\tb")).toBe("one\r\ntwo\nthree");
});

test.each([
  ["single quotes", "<kept xmlns='urn:tackstitch:kept'><text key='a'>x</text></kept>"],
  ["a prefix", '<k:kept xmlns:k="urn:tackstitch:kept"><k:text key="a">x</k:text></k:kept>'],
  ["an open angle bracket's partner in an attribute", '<kept><text other=">" key="a">x</text></kept>'],
  ["line breaks between", '<kept>\r\n  <text key="a">x</text>\r\n</kept>'],
])("a part written anew with %s is read the same", (_, xml) => {
  expect([...readKeptXml(xml)]).toEqual([["a", "x"]]);
});

test("an empty text is kept, also as an element of one tag", () => {
  expect([...readKeptXml('<kept><text key="a"/><text key="b"></text><text key="c">x</text></kept>')]).toEqual([
    ["a", ""],
    ["b", ""],
    ["c", "x"],
  ]);
});
