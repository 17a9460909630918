import { openStation } from "../../../src/domain/plan/openStation";
import { soonestFree } from "../../../src/domain/plan/soonestFree";

test("the one that has been free longest takes the next look, the first where tied", () => {
  const chairs = openStation(3, 100);
  expect(soonestFree(chairs)).toBe(0);
  chairs.freeAtSeconds.splice(0, 3, 300, 200, 200);
  expect(soonestFree(chairs)).toBe(1);
});
