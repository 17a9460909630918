import type { Hold } from "../../../src/domain/plan/hold";
import { holdBack } from "../../../src/domain/plan/holdBack";

test("the latest holds a step back, and of two as late the one named first", () => {
  const hold: Hold = { untilSeconds: 100, kind: "call", look: -1, talent: -1 };
  holdBack(hold, 90, "chair", 1);
  expect(hold).toEqual({ untilSeconds: 100, kind: "call", look: -1, talent: -1 });
  holdBack(hold, 200, "talent", 2, 7);
  expect(hold).toEqual({ untilSeconds: 200, kind: "talent", look: 2, talent: 7 });
  holdBack(hold, 200, "camera", 3);
  expect(hold).toEqual({ untilSeconds: 200, kind: "talent", look: 2, talent: 7 });
  holdBack(hold, 201, "meal", -1);
  expect(hold).toEqual({ untilSeconds: 201, kind: "meal", look: -1, talent: -1 });
});
