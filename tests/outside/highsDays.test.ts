import fc from "fast-check";
import loadHighs from "highs";
import { lookOrder } from "../../src/domain/day/lookOrder";
import type { Look } from "../../src/domain/day/look";
import { smallestCrew } from "../../src/domain/day/smallestCrew";
import { sampleDay, sampleLook } from "../domain/day/sampleLook";

// A second solver on small days: HiGHS (MIT), given a big-M model of who comes before whom. One chair, one dresser, one
// camera that crosses between sets, a piece that goes from look to look, no meal: what it proves soonest must be what the search proves soonest.

const BIG = 1000;
const CROSSING = 7;
const HAND_OVER = 4;

const looksOfDay: fc.Arbitrary<Look[]> = fc
  .array(
    fc.record({
      talent: fc.nat(2),
      hair: fc.constantFrom(0, 0, 10, 20),
      change: fc.integer({ min: 0, max: 25 }),
      shooting: fc.integer({ min: 1, max: 30 }),
      set: fc.nat(1),
      makeupFirst: fc.boolean(),
      wearsShared: fc.boolean(),
      after: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.nat(31)),
    }),
    { minLength: 2, maxLength: 6 },
  )
  .map((looks) =>
    looks.map(({ talent, hair, change, shooting, set, makeupFirst, wearsShared, after }, index) =>
      sampleLook(index, {
        talents: [`T${talent}`],
        hairMakeupMinutes: hair,
        changeMinutes: change,
        shootingMinutes: shooting,
        set: `S${set}`,
        makeupFirst,
        pieces: wearsShared ? ["P1"] : [],
        after: looks.flatMap((_, other) => (other < index && ((after >> other) & 1) === 1 ? [String(other)] : [])),
      }),
    ),
  );

/** The model in the LP format: y says which of two looks comes first; h, c and s when hair, change and shot begin, e when the day ends. */
function modelOf(looks: readonly Look[]): string {
  const lines: string[] = [];
  const ordered = looks.flatMap((_, i) => looks.flatMap((__, j) => (i < j ? [[i, j] as const] : [])));
  const isBefore = (i: number, j: number): { term: string; constant: number } =>
    i < j ? { term: `y${i}_${j}`, constant: 0 } : { term: `- y${j}_${i}`, constant: 1 };
  /** later >= earlier + length where i comes before j. */
  const follows = (i: number, j: number, later: string, earlier: string, length: number): void => {
    const { term, constant } = isBefore(i, j);
    const signed = term.startsWith("-") ? `+ ${BIG} ${term.slice(2)}` : `- ${BIG} ${term}`;
    lines.push(` ${later} - ${earlier} ${signed} >= ${length - BIG + BIG * constant}`);
  };
  looks.forEach((look, i) => {
    const { hairMakeupMinutes: hair, changeMinutes: change, shootingMinutes: shooting } = look;
    if (look.makeupFirst) lines.push(` c${i} - h${i} >= ${hair}`, ` s${i} - c${i} >= ${change}`);
    else lines.push(` h${i} - c${i} >= ${change}`, ` s${i} - h${i} >= ${hair}`);
    lines.push(` e - s${i} >= ${shooting}`);
    const begins = look.makeupFirst ? "h" : "c";
    looks.forEach((other, j) => {
      if (i === j) return;
      follows(i, j, `s${j}`, `s${i}`, shooting + (look.set === other.set ? 0 : CROSSING));
      if (change > 0 && other.changeMinutes > 0) follows(i, j, `c${j}`, `c${i}`, change);
      if (hair > 0 && other.hairMakeupMinutes > 0) follows(i, j, `h${j}`, `h${i}`, hair);
      if (look.talents[0] === other.talents[0])
        follows(i, j, `${other.makeupFirst ? "h" : "c"}${j}`, `s${i}`, shooting);
      if (look.pieces.length > 0 && other.pieces.length > 0) {
        const handOver = look.talents[0] === other.talents[0] ? 0 : HAND_OVER;
        follows(i, j, `${other.changeMinutes > 0 ? "c" : "s"}${j}`, `s${i}`, shooting + handOver);
      }
      for (const key of other.after) if (key === look.key) lines.push(` y${i}_${j} = 1`);
    });
    lines.push(` ${begins}${i} >= 0`);
  });
  const binaries = ordered.map(([i, j]) => ` y${i}_${j}`);
  return ["Minimize", " obj: e", "Subject To", ...lines, "Binary", ...binaries, "End"].join("\n");
}

test("a second solver proves the same soonest end on small days", async () => {
  const highs = await loadHighs();
  const crew = { ...smallestCrew, crossingMinutes: CROSSING, handOverMinutes: HAND_OVER };
  fc.assert(
    fc.property(looksOfDay, (looks) => {
      const found = lookOrder(sampleDay(looks, { crew }));
      if (!found.ok) throw new Error(JSON.stringify(found.problem));
      expect(found.value.isProvedBest).toBe(true);
      const solved = highs.solve(modelOf(looks), { mip_rel_gap: 0 });
      expect(solved.Status).toBe("Optimal");
      // Every length is a whole minute, so the ends are too. The solver takes a y within its tolerance of 1e-6 for whole,
      // which BIG makes a thousandth of a minute: half a hundredth tells any two ends apart.
      expect((found.value.plan.ends - 9 / 24) * 1440).toBeCloseTo(solved.ObjectiveValue, 2);
    }),
    { numRuns: 60 },
  );
}, 240_000);
