import { soonestCamera } from "../../../src/domain/plan/soonestCamera";
import { stairs, twoCameras } from "./twoCameras";

test("a camera that is free later but on the set may be there sooner", () => {
  expect(soonestCamera(twoCameras(), stairs, 60, null)).toBe(1);
  expect(soonestCamera(twoCameras(), stairs, 30, null)).toBe(0);
  expect(soonestCamera(twoCameras(), stairs, 40, null)).toBe(0);
});
