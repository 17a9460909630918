import { freeName } from "../../src/pane/freeName";

test("a name that is free stays, and one that is taken in whatever case gets the first free number", () => {
  expect(freeName("Pieces", ["Looks"], " ")).toBe("Pieces");
  expect(freeName("Pieces", ["PIECES", "Pieces2"], "")).toBe("Pieces3");
  expect(freeName("Pieces", ["pieces"], " ")).toBe("Pieces 2");
});

test("no name is longer than the 31 characters that hosts give a sheet, its number included", () => {
  const wanted = "Direction for the whole of the harbour shoot";
  const first = freeName(wanted, [], " ");
  const second = freeName(wanted, [first], " ");
  expect([first, second]).toEqual(["Direction for the whole of the", "Direction for the whole of th 2"]);
  expect(second).toHaveLength(31);
});
