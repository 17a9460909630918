import fc from "fast-check";
import { latestArrival } from "../../../src/domain/runs/latestArrival";
import { visitEnd } from "../../../src/domain/runs/visitEnd";
import { arbitraryRun } from "./arbitraryRun";

test("the latest arrival is the last after which the visit is over in time, and one minute more is too late", () => {
  const MINUTE = 60_000;
  fc.assert(
    fc.property(
      arbitraryRun(3).filter((run) => run.stopCount > 0),
      fc.nat(150),
      (run, overByMinutes) => {
        const latest = latestArrival(run, 1, overByMinutes * MINUTE);
        const inTime = Array.from({ length: 300 }, (_, minute) => minute * MINUTE).filter(
          (arrive) => visitEnd(run, 1, arrive) <= overByMinutes * MINUTE,
        );
        expect(latest >= 0 ? latest : undefined).toBe(inTime.at(-1));
      },
    ),
    { numRuns: 500 },
  );
});

test("who comes sooner never leaves later", () => {
  fc.assert(
    fc.property(
      arbitraryRun(3).filter((run) => run.stopCount > 0),
      fc.nat(150),
      fc.nat(150),
      (run, one, other) => {
        const [sooner, later] = [Math.min(one, other) * 60_000, Math.max(one, other) * 60_000];
        expect(visitEnd(run, 1, sooner)).toBeLessThanOrEqual(visitEnd(run, 1, later));
      },
    ),
  );
});
