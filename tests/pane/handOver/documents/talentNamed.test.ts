import { heldPieces } from "../../../../src/pane/handOver/documents/heldPieces";
import { talentNamed } from "../../../../src/pane/handOver/documents/talentNamed";
import { DAY } from "./jobSheets";
import { sourceOf } from "./sourceOf";

const told = async (description: string, ...talents: string[]) => {
  const rows = [
    ["Piece", "Description", "Out", "Talent"],
    ...(talents.length === 0 ? [""] : talents).map((talent, at) => [
      String(at + 1),
      at === 0 ? description : "x",
      DAY,
      talent,
    ]),
  ];
  const { pieces } = await sourceOf([{ name: "Loans", rows }], DAY);
  const { held } = heldPieces(pieces, DAY, true);
  return talentNamed(held, held).length;
};

test.each([
  ["scarf for MINA", ["Mina"], 1],
  ["gown, Ana Lucía's fitting", ["Ana Lucía"], 1],
  ["terminal-grey coat", ["Mina"], 0],
  ["Ana's gown", ["Ana Lucía"], 0],
  ["jo coat", ["Jo"], 0],
  ["coat", [], 0],
  ["coat", ["???"], 0],
])("%j with the talents %j has %d sentences", async (description, talents, count) => {
  expect(await told(description, ...talents)).toBe(count);
});
