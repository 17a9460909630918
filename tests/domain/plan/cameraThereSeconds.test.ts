import { cameraThereSeconds } from "../../../src/domain/plan/cameraThereSeconds";
import { openStation } from "../../../src/domain/plan/openStation";
import { nowhere, roof, stairs, twoCameras } from "./twoCameras";

test.each([
  ["the same set", roof, 100],
  ["another set", stairs, 160],
  ["a set that is not said", nowhere, 100],
])("%s", (_, set, there) => {
  expect(cameraThereSeconds(twoCameras(), 0, set, 60, null)).toBe(there);
});

test("a camera that has been nowhere yet crosses from nowhere", () => {
  expect(cameraThereSeconds(openStation(1, 50), 0, stairs, 60, null)).toBe(50);
});

test("a crossing that would reach into the meal is made after it", () => {
  expect(cameraThereSeconds(twoCameras(), 0, stairs, 60, { fromSeconds: 160, untilSeconds: 200 })).toBe(160);
  expect(cameraThereSeconds(twoCameras(), 0, stairs, 60, { fromSeconds: 159, untilSeconds: 200 })).toBe(260);
});
