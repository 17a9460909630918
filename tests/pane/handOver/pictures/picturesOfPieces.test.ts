import { linkIn } from "../../../../src/pane/handOver/pictures/linkIn";
import { picturesOfPieces } from "../../../../src/pane/handOver/pictures/picturesOfPieces";

const files = ["P014.jpg", "p-014 back.png", "P0145.jpg", "piece 14.jpg", "14.jpg", "look 14.jpg", "coat.webp"].map(
  (fileName) => ({ fileName, dataUrl: "data:image/jpeg;base64,AAAA" }),
);
const shown = (number: string, photo = "") =>
  picturesOfPieces({ number, photo }, files).map(({ fileName }) => fileName);

test("a file belongs to the piece whose number it is named for, whatever the spelling", () => {
  expect(shown("P014")).toEqual(["P014.jpg", "p-014 back.png"]);
  expect(shown("p 014")).toEqual(["P014.jpg", "p-014 back.png"]);
});

test("a bare figure is the name of a look, which may show who wears it, so a piece needs the word", () => {
  expect(shown("14")).toEqual(["piece 14.jpg"]);
});

test("the file that the Photo cell names belongs to the piece, with or without a folder", () => {
  expect(shown("", "coat.webp")).toEqual(["coat.webp"]);
  expect(shown("P9", "C:\\pull\\Coat.WEBP")).toEqual(["coat.webp"]);
});

test("a piece without a number or a photo has no file", () => {
  expect(shown("", "")).toEqual([]);
});

test("only an address of the web is a link", () => {
  expect(linkIn(" https://files.example/coat.jpg ")).toBe("https://files.example/coat.jpg");
  for (const other of ["coat.jpg", "javascript:alert(1)", "https://a b", 'https://x/"><script>', ""])
    expect(linkIn(other)).toBe("");
});
