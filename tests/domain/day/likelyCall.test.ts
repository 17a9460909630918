import { likelyCall } from "../../../src/domain/day/likelyCall";
import { sampleLook } from "./sampleLook";

test("the call is when the first talent arrives, and 09:00 where no arrival is said", () => {
  expect(likelyCall([sampleLook(1, { arrivesAt: 0.4 }), sampleLook(2, { arrivesAt: 0.3 }), sampleLook(3)])).toBe(0.3);
  expect(likelyCall([sampleLook(1)])).toBe(9 / 24);
  expect(likelyCall([])).toBe(9 / 24);
});
