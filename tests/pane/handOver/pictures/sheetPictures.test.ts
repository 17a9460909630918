import { directionPage } from "../../../../src/pane/handOver/documents/directionPage";
import { returnSlips } from "../../../../src/pane/handOver/documents/returnSlips";
import { setCards } from "../../../../src/pane/handOver/documents/setCards";
import { blobOfDataUrl } from "../../../../src/pane/handOver/pictures/blobOfDataUrl";
import { DAY, jobSheets } from "../documents/jobSheets";
import { sourceOf } from "../documents/sourceOf";

const over = (sheetId: string, row: number, column: number, mark: string) => ({
  at: { sheetId, row, column },
  fileName: `Picture ${mark}`,
  dataUrl: `data:image/jpeg;base64,${mark}`,
});

/** Sheets "s0" Loans and "s2" Looks; a board of references is added behind them. */
const board = [...jobSheets, { name: "Board", rows: [] }];
const boardId = `s${board.length - 1}`;

test("a slip shows the pictures that lie over the rows of its own pieces, by their names, and no others", async () => {
  const sheetPictures = [
    over("s0", 1, 16, "COAT"),
    over("s0", 4, 3, "SHOE"),
    over("s0", 0, 0, "LOGO"),
    over("s2", 1, 0, "LOOK"),
    over("s0", 2, 30, "FARR"),
  ];
  const { paper } = returnSlips(await sourceOf(board, DAY, { sheetPictures }));
  const pictures = paper.pages.map(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === "pictures" ? block.pictures.map(({ says }) => says) : [])),
  );
  // The brogues of row 4 came back the day before, so they stand on no slip; nor do their pictures.
  expect(pictures).toEqual([["1 wool coat"], []]);
});

test("set cards show the picture over a look's row, and those of its pieces below", async () => {
  const rows = board.find(({ name }) => name === "Looks")?.rows ?? [];
  const rowOf = (look: number) => rows.findIndex(([cell]) => cell === look);
  expect(rowOf(1)).toBeGreaterThan(0);
  const sheetPictures = [over("s2", rowOf(1), 2, "LOOK"), over("s0", 1, 2, "COAT")];
  const { ownFile, missing } = setCards(await sourceOf(board, DAY, { sheetPictures }));
  if (ownFile?.kind !== "page") throw new Error("no page");
  const cards = ownFile.html.split("<article").slice(1);
  expect(cards.map((card) => [...card.matchAll(/base64,(\w+)"/g)].map(([, mark]) => mark))).toEqual([
    [],
    ["LOOK", "COAT"],
  ]);
  expect(cards[1]).toContain("<figcaption>1 wool coat</figcaption>");
  expect(missing).toContain("No picture for Look 2.");
});

test("what is chosen by hand stands before what lies over the row", async () => {
  const rows = board.find(({ name }) => name === "Looks")?.rows ?? [];
  const sheetPictures = [
    over(
      "s2",
      rows.findIndex(([cell]) => cell === 1),
      2,
      "OVER",
    ),
  ];
  const pictures = [{ fileName: "look 1.jpg", dataUrl: "data:image/jpeg;base64,HAND" }];
  const { ownFile } = setCards(await sourceOf(board, DAY, { sheetPictures, pictures }));
  if (ownFile?.kind !== "page") throw new Error("no page");
  expect([...ownFile.html.matchAll(/base64,(\w+)"/g)].map(([, mark]) => mark)).toEqual(["HAND", "OVER"]);
});

test("pictures on a sheet without a table are references of the direction page; those beside tables are not", async () => {
  const sheetPictures = [over(boardId, 3, 1, "MOOD"), over("s0", 0, 0, "LOGO")];
  const { paper } = directionPage(await sourceOf(board, DAY, { sheetPictures }));
  const shown = paper.pages[0]?.blocks.filter(({ kind }) => kind === "picture");
  expect(shown).toEqual([{ kind: "picture", dataUrl: "data:image/jpeg;base64,MOOD", says: "Reference, Picture MOOD" }]);
});

test("a link in a look's Photo cell stands on the direction page and the set card, for a tap and no more", async () => {
  const link = "https://files.example/look1.jpg?a=1&b=2";
  const sheets = board.map((sheet) => {
    if (sheet.name !== "Looks") return sheet;
    const photo = sheet.rows[0]?.indexOf("Photo") ?? -1;
    if (photo < 0) throw new Error("the looks have no Photo column");
    return {
      ...sheet,
      rows: sheet.rows.map((row) => (row[0] === 1 ? row.map((cell, at) => (at === photo ? link : cell)) : row)),
    };
  });
  const { ownFile } = setCards(await sourceOf(sheets, DAY));
  if (ownFile?.kind !== "page") throw new Error("no page");
  expect(ownFile.html).toContain('<a href="https://files.example/look1.jpg?a=1&amp;b=2" rel="noreferrer">');
  const { paper } = directionPage(await sourceOf(sheets, DAY));
  expect(JSON.stringify(paper)).toContain(link);
});

test("a data address is read without fetching anything; anything else is none", async () => {
  const blob = blobOfDataUrl("data:image/png;base64,AAEC");
  expect([blob?.type, blob && [...new Uint8Array(await blob.arrayBuffer())]]).toEqual(["image/png", [0, 1, 2]]);
  expect(blobOfDataUrl("https://files.example/a.png")).toBeNull();
  expect(blobOfDataUrl("")).toBeNull();
});
