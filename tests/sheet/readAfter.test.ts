import { readAfter } from "../../src/sheet/readAfter";

test.each([
  ["1", ["1"]],
  ["1; look 02, 7a", ["1", "2", "7a"]],
  ["1\n2", ["1", "2"]],
  [" ; ", []],
  ["", []],
])("%j names the looks %j", (text, keys) => {
  expect(readAfter(text)).toEqual(keys);
});
