import type { DayWork, WorkLook } from "./dayWork";
import { type ShotTails, shotTails } from "./shotTails";

/** What the looks of a day take at least, made ready once for `soonestEnd`. */
export interface DayLoads {
  /** By look: the shortest its change can be, whatever its talents wore before. */
  readonly leastChange: readonly number[];
  /** By talent: when that talent is there for the first of the looks. */
  readonly talentThereSeconds: readonly number[];
  /** The looks that need the one chair and then, some time later, are shot: in the best order for these two alone. */
  readonly chairFirst: readonly PairedLook[];
  /** Likewise for the one dresser. */
  readonly dresserFirst: readonly PairedLook[];
  /** null where the one camera's shots cannot be reckoned by sets. */
  readonly shotTails: ShotTails | null;
  /** Room to reckon in, written over every time. */
  readonly notes: LoadNotes;
}

/** Room for `soonestEnd` to reckon in: by talent, by look, by place among those left, by set. */
export interface LoadNotes {
  readonly talentUntil: number[];
  readonly isLeft: Uint8Array;
  readonly ready: number[];
  readonly shooting: number[];
  readonly isSetLeft: Uint8Array;
}

/** A look between two things that serve one look at a time. */
export interface PairedLook {
  readonly look: number;
  readonly firstSeconds: number;
  /** From the end of the first to the beginning of the second at least. */
  readonly betweenSeconds: number;
  readonly secondSeconds: number;
}

/** The loads of a day. Pairs are left empty where there are several chairs, or several dressers. */
export function dayLoads(work: DayWork): DayLoads {
  const leastChange = work.looks.map(leastChangeOf);
  const pairs = (firstOf: (look: WorkLook, change: number) => number, betweenOf: typeof firstOf): PairedLook[] =>
    work.looks
      .map((look, index) => ({
        look: index,
        firstSeconds: firstOf(look, leastChange[index]!),
        betweenSeconds: betweenOf(look, leastChange[index]!),
        secondSeconds: look.shootingSeconds,
      }))
      .filter(({ firstSeconds }) => firstSeconds > 0)
      .sort(work.cameras === 1 ? johnson : longestRestFirst);
  const talentThereSeconds = new Array<number>(work.talentCount).fill(Infinity);
  for (const { talents, thereSeconds } of work.looks) {
    for (const talent of talents) talentThereSeconds[talent] = Math.min(talentThereSeconds[talent]!, thereSeconds);
  }
  return {
    leastChange,
    talentThereSeconds,
    shotTails: shotTails(work),
    notes: {
      talentUntil: [...talentThereSeconds],
      isLeft: new Uint8Array(work.looks.length),
      ready: work.looks.map(() => 0),
      shooting: work.looks.map(() => 0),
      isSetLeft: new Uint8Array(1 + Math.max(-1, ...work.looks.map((look) => look.set))),
    },
    chairFirst:
      work.chairs > 1
        ? []
        : pairs(
            (look) => look.hairMakeupSeconds,
            (look, change) => (look.makeupFirst ? change : 0),
          ),
    dresserFirst:
      work.dressers > 1
        ? []
        : pairs(
            (_, change) => change,
            (look) => (look.makeupFirst ? 0 : look.hairMakeupSeconds),
          ),
  };
}

function leastChangeOf({ changeSeconds, changeSecondsFrom, talents }: WorkLook): number {
  if (changeSecondsFrom === null || talents.length === 0) return changeSeconds;
  return Math.min(changeSeconds, ...changeSecondsFrom.values());
}

/** The order in which two machines, with a lag between them, are done soonest: Johnson 1954, with lags Mitten 1959. */
function johnson(a: PairedLook, b: PairedLook): number {
  const headOf = (pair: PairedLook): number => pair.firstSeconds + pair.betweenSeconds;
  const tailOf = (pair: PairedLook): number => pair.betweenSeconds + pair.secondSeconds;
  const isEarly = (pair: PairedLook): boolean => headOf(pair) < tailOf(pair);
  if (isEarly(a) !== isEarly(b)) return isEarly(a) ? -1 : 1;
  return isEarly(a) ? headOf(a) - headOf(b) : tailOf(b) - tailOf(a);
}

/** With several cameras only what follows each look itself counts: the longest rest first. */
function longestRestFirst(a: PairedLook, b: PairedLook): number {
  return b.betweenSeconds + b.secondSeconds - a.betweenSeconds - a.secondSeconds;
}
