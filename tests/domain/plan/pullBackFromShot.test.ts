import { pullBackFromShot } from "../../../src/domain/plan/pullBackFromShot";
import type { WaitKind } from "../../../src/domain/plan/daySchedule";

function pulled(makeupFirst: boolean, from: number[], until: number[], shotAt: number): unknown {
  const kinds: WaitKind[] = ["call", "call", "call"];
  pullBackFromShot(from, until, kinds, 0, makeupFirst, shotAt);
  return { from, until, kinds };
}

test("preparation that had time enough stays where it was", () => {
  expect(pulled(true, [0, 10, 0], [10, 30, 0], 30)).toEqual({
    from: [0, 10, 0],
    until: [10, 30, 0],
    kinds: ["call", "call", "call"],
  });
});

test("what would end after the shot began ends with its beginning, and pushes what is before it", () => {
  const kinds = ["shot at", "shot at", "call"];
  expect(pulled(true, [0, 10, 0], [10, 30, 0], 25)).toEqual({ from: [-5, 5, 0], until: [5, 25, 0], kinds });
  expect(pulled(false, [20, 0, 0], [30, 20, 0], 25)).toEqual({ from: [15, -5, 0], until: [25, 15, 0], kinds });
});
