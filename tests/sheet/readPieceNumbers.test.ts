import { readPieceNumbers } from "../../src/sheet/readPieceNumbers";

test.each([
  ["12", ["12"]],
  ["12, 14; P-7", ["12", "14", "P-7"]],
  ["SH-004 & 7b + no. 9", ["SH-004", "7b", "no. 9"]],
  ["12\n13", ["12", "13"]],
  ["black dress, boots", []],
  ["2 rings, 12", ["12"]],
  ["White shirt 2", []],
  ["", []],
])("%j lists the pieces %j", (text, numbers) => {
  expect(readPieceNumbers(text)).toEqual(numbers);
});
