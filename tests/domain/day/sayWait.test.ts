import { sayWait } from "../../../src/domain/day/sayWait";
import type { Wait } from "../../../src/domain/day/wait";

test.each([
  [{ kind: "call", look: null, talent: null }, "call"],
  [{ kind: "arrival", look: null, talent: "Mina" }, "Mina arrives"],
  [{ kind: "arrival", look: null, talent: null }, "talent arrives"],
  [{ kind: "talent", look: 2, talent: "Mina" }, "Mina, look 2"],
  [{ kind: "dresser", look: "7a", talent: null }, "dresser, look 7a"],
  [{ kind: "chair", look: "Look 7", talent: null }, "chair, Look 7"],
  [{ kind: "camera", look: 2, talent: null }, "camera, look 2"],
  [{ kind: "piece", look: 2, talent: null, piece: "P12" }, "piece P12, look 2"],
  [{ kind: "crossing", look: 2, talent: null }, "crossing from look 2"],
  [{ kind: "after", look: 2, talent: null }, "look 2"],
  [{ kind: "order", look: 2, talent: null }, "order, look 2"],
  [{ kind: "meal", look: null, talent: null }, "meal"],
  [{ kind: "shot at", look: null, talent: null }, "shot at"],
] as [Wait, string][])("%j is said as %s", (wait, said) => {
  expect(sayWait(wait)).toBe(said);
});
