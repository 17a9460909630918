import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { openWorkbookFile, type OpenedFile } from "../../../src/bench/file/openWorkbookFile";
import { pictureDataUrl } from "../../../src/bench/file/pictureDataUrl";
import { openSample } from "../save/openSample";
import { picturedWorkbook, plainPng } from "../picturedWorkbook";

async function opened(bytes: Uint8Array): Promise<OpenedFile> {
  const outcome = await openWorkbookFile(bytes, "pictures.xlsx", "book");
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.value;
}

const rows = [
  { cells: ["Piece", "Description", "Photo"] },
  { cells: ["P001", "Silk coat", null], picture: [200, 0, 0] as const },
  { cells: ["P002", "Tall boots", null] },
  { cells: ["P003", "Hat", null], picture: [0, 0, 200] as const },
];

test("each picture of a file that a library wrote is told by the row it lies over, with what it shows", async () => {
  const file = await opened(await picturedWorkbook({ Pieces: rows, Plain: [{ cells: ["nothing"] }] }));
  expect(file.pictures.map(({ at }) => [file.data.sheets[at.sheetId]?.name, at.row])).toEqual([
    ["Pieces", 1],
    ["Pieces", 3],
  ]);
  const shown = file.pictures.map(({ path }) => file.parts[path] ?? new Uint8Array());
  expect(shown.map((bytes) => Buffer.from(bytes).toString("hex"))).toEqual(
    [plainPng(40, 200, 0, 0), plainPng(40, 0, 0, 200)].map((bytes) => Buffer.from(bytes).toString("hex")),
  );
  expect(new Set(file.pictures.map(({ key }) => key)).size).toBe(2);
});

test("a picture anchored to two cells that begins a little above its row belongs to its row, also where a filter hides it", async () => {
  const parts = unzipSync(await picturedWorkbook({ Pieces: rows }));
  const drawing = Object.keys(parts).find((path) => /drawings\/drawing1\.xml$/.test(path)) ?? "";
  const corner = (row: number, offset: number) =>
    `<xdr:col>3</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>${offset}</xdr:rowOff>`;
  // A row of 20 pixels is 190,500 units high.
  const anchors = strFromU8(parts[drawing] ?? new Uint8Array())
    .replace(
      /<xdr:from>[\s\S]*?<\/xdr:from>/,
      `<xdr:from>${corner(1, 700_000)}</xdr:from><xdr:to>${corner(2, 190_000)}</xdr:to>`,
    )
    .replace(/<xdr:ext\b[^>]*>/, "")
    .replace(/oneCellAnchor/g, "twoCellAnchor");
  const sheet = Object.keys(parts).find((path) => path.endsWith("sheet1.xml")) ?? "";
  const hidden = strFromU8(parts[sheet] ?? new Uint8Array()).replace(/<row r="3"/, '<row r="3" hidden="1"');
  const file = await opened(zipSync({ ...parts, [drawing]: strToU8(anchors), [sheet]: strToU8(hidden) }));
  expect(file.pictures[0]?.at).toMatchObject({ row: 2, column: 3 });
});

/** The parts that keep a picture within a cell, as [MS-XLSX] 2.6 lays them out; from memory of the specification, since no library here writes them. */
const CELL_PICTURE: Readonly<Record<string, string>> = {
  "xl/metadata.xml":
    '<metadata xmlns:xlrd="r"><metadataTypes count="1"><metadataType name="XLRICHVALUE"/></metadataTypes><futureMetadata name="XLRICHVALUE" count="1"><bk><extLst><ext uri="{x}"><xlrd:rvb i="0"/></ext></extLst></bk></futureMetadata><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>',
  "xl/richData/rdrichvalue.xml": '<rvData count="1"><rv s="0"><v>0</v><v>5</v></rv></rvData>',
  "xl/richData/rdrichvaluestructure.xml":
    '<rvStructures count="1"><s t="_localImage"><k n="_rvRel:LocalImageIdentifier" t="i"/><k n="CalcOrigin" t="i"/></s></rvStructures>',
  "xl/richData/richValueRel.xml": '<richValueRels xmlns:r="r"><rel r:id="rId1"/></richValueRels>',
  "xl/richData/_rels/richValueRel.xml.rels":
    '<Relationships><Relationship Id="rId1" Type="image" Target="../media/coat.png"/></Relationships>',
};

test("a picture that stands within a cell is told by that cell", async () => {
  const parts = unzipSync(
    await picturedWorkbook({ Pieces: [{ cells: ["Piece", "Photo"] }, { cells: ["P001", "held"] }] }),
  );
  const sheet = Object.keys(parts).find((path) => path.endsWith("sheet1.xml")) ?? "";
  const held = strFromU8(parts[sheet] ?? new Uint8Array()).replace(
    /<c r="B2"[^>]*>[\s\S]*?<\/c>/,
    '<c r="B2" t="e" vm="1"><v>#VALUE!</v></c>',
  );
  const extra = Object.entries(CELL_PICTURE).map(([path, xml]) => [path, strToU8(xml)] as const);
  const file = await opened(
    zipSync({
      ...parts,
      [sheet]: strToU8(held),
      ...Object.fromEntries(extra),
      "xl/media/coat.png": plainPng(2, 1, 2, 3),
    }),
  );
  expect(file.pictures).toMatchObject([
    { at: { row: 1, column: 1 }, name: "Picture in B2", path: "xl/media/coat.png" },
  ]);
});

test("a workbook without pictures has none", async () => {
  expect((await openSample()).pictures).toEqual([]);
});

test("what a picture is, is told by how it begins; a kind that no browser shows is none", () => {
  expect(pictureDataUrl(plainPng(1, 0, 0, 0))).toMatch(/^data:image\/png;base64,iVBORw0KGgo/);
  expect(pictureDataUrl(new Uint8Array([0xff, 0xd8, 0xff, 0xe0]))).toBe("data:image/jpeg;base64,/9j/4A==");
  // A Windows metafile ([MS-EMF] 2.3.4.2), as older workbooks hold them.
  expect(pictureDataUrl(new Uint8Array([1, 0, 0, 0, 0x6c, 0, 0, 0]))).toBeNull();
});
