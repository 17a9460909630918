import { heldPictures } from "../../../src/bench/port/heldPictures";
import { drawingPatch } from "../../../src/bench/save/drawingPatch";
import { saveWorkbookFile } from "../../../src/bench/save/saveWorkbookFile";
import type { StructureEdit } from "../../../src/bench/save/structureEdit";
import { picturedWorkbook } from "../picturedWorkbook";
import { openBytes, untouched } from "./openSample";

const pieces = () =>
  picturedWorkbook({
    Pieces: [
      { cells: ["Piece", "Photo"] },
      { cells: ["P001", null], picture: [1, 2, 3] },
      { cells: ["P002", null] },
      { cells: ["P003", null], picture: [4, 5, 6] },
    ],
    Looks: [{ cells: ["Look"] }, { cells: [7], picture: [7, 8, 9] }],
  });

const edit = (kind: StructureEdit["kind"], axis: StructureEdit["axis"], from: number, count = 1): StructureEdit => ({
  sheetId: "1",
  axis,
  kind,
  from,
  count,
});

async function rowsAfter(structure: readonly StructureEdit[]) {
  const file = await openBytes(await pieces());
  const again = await openBytes(saveWorkbookFile(file, { ...untouched(file), structure }));
  const places = (of: readonly { at: { sheetId: string; row: number; column: number } }[]) =>
    of.map(({ at }) => [at.sheetId, at.row, at.column]);
  return { inGrid: places(heldPictures(file.pictures, structure)), inFile: places(again.pictures) };
}

test.each([
  [
    "nothing",
    [],
    [
      ["1", 1, 1],
      ["1", 3, 1],
      ["2", 1, 0],
    ],
  ],
  [
    "rows put in above",
    [edit("insert", "row", 0, 2)],
    [
      ["1", 3, 1],
      ["1", 5, 1],
      ["2", 1, 0],
    ],
  ],
  [
    "a row put in between",
    [edit("insert", "row", 2)],
    [
      ["1", 1, 1],
      ["1", 4, 1],
      ["2", 1, 0],
    ],
  ],
  [
    "a row taken out between",
    [edit("remove", "row", 2)],
    [
      ["1", 1, 1],
      ["1", 2, 1],
      ["2", 1, 0],
    ],
  ],
  [
    "a column put in before",
    [edit("insert", "column", 0)],
    [
      ["1", 1, 2],
      ["1", 3, 2],
      ["2", 1, 0],
    ],
  ],
  [
    "a row taken out and put back by an undo",
    [edit("remove", "row", 1), edit("insert", "row", 1)],
    [
      ["1", 1, 1],
      ["1", 3, 1],
      ["2", 1, 0],
    ],
  ],
] as const)(
  "after %s pictures go on lying over their rows, in the grid and in the saved file",
  async (_, structure, expected) => {
    const { inGrid, inFile } = await rowsAfter(structure);
    expect(inGrid).toEqual(expected);
    expect(inFile).toEqual(expected);
  },
);

test("a picture whose row was taken out stays in the file, and belongs to no row of the open workbook", async () => {
  const { inGrid, inFile } = await rowsAfter([edit("remove", "row", 1)]);
  expect(inGrid).toEqual([["1", 2, 1], ["2", 1, 0]]); // prettier-ignore
  expect(inFile).toHaveLength(3);
});

test("both corners of a picture that lies over two cells move, whatever the prefix", () => {
  const corner = (row: number) => `<col>2</col><colOff>5</colOff><row>${row}</row><rowOff>7</rowOff>`;
  const xml = (from: number, to: number) =>
    `<twoCellAnchor><from>${corner(from)}</from><to>${corner(to)}</to></twoCellAnchor>`;
  expect(drawingPatch(xml(3, 5), [edit("insert", "row", 4, 10)])).toBe(xml(3, 15));
  expect(drawingPatch(xml(13, 15), [edit("remove", "row", 0, 2)])).toBe(xml(11, 13));
});
