import { looksByNumber } from "../../src/sheet/looksByNumber";
import { sampleLook } from "../domain/day/sampleLook";

test("each piece number leads to the looks that list it, whatever its spelling", () => {
  const looks = [
    sampleLook("Look 1", { key: "1", pieces: ["P-7", "101"] }),
    sampleLook(2, { pieces: ["P-7"] }),
    sampleLook(3),
  ];
  expect([...looksByNumber(looks)]).toEqual([
    [
      "p7",
      [
        { name: "Look 1", key: "1" },
        { name: "2", key: "2" },
      ],
    ],
    ["101", [{ name: "Look 1", key: "1" }]],
  ]);
});
