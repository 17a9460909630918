import { readShare } from "../../src/sheet/readShare";
import { says } from "./says";

test("a share is a number from 0 to 1, or percent as text", () => {
  for (const [raw, share] of [
    [0.3, 0.3],
    ["30%", 0.3],
    [0, 0],
    [1, 1],
    ["100 %", 1],
    [null, null],
    ["", null],
  ])
    expect(readShare(raw, "keepShare")).toEqual({ ok: true, value: share });
});

test.each([30, -0.1, "130%", "a third"])("%j is refused, with how to write it", (raw) => {
  expect(says(readShare(raw, "keepShare"))).toContain("give a share from 0 to 1, such as 0.3 or 30%");
});
