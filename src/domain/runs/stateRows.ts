import { never } from "./never";

/** For each set of stops told of a row, with a cell for each of its stops as the last one met. Row 0 is the empty set, without cells. */
interface StateRows {
  readonly sets: readonly number[];
  /** The row of a set, 0 where it was never told of. */
  readonly rowOf: (set: number) => number;
  readonly endAt: (row: number, last: number) => number;
  readonly travelAt: (row: number, last: number) => number;
  /** Keeps the sooner end and, apart from it, the lesser travel. */
  readonly tell: (set: number, last: number, endMs: number, travelMs: number) => void;
}

/** Rows as they are told of: no more room than they take, for there may be hundreds of thousands. Sets are bit patterns: bit 0 is stop 1. */
export function stateRows(stopCount: number): StateRows {
  const rowOf = new Int32Array(2 ** stopCount);
  const sets = [0];
  const firstOf = [0];
  let cells = 0;
  let ends = new Float64Array(1024);
  let travels = new Float64Array(1024);

  function cellOf(row: number, last: number): number {
    return firstOf[row]! + bitCount(sets[row]! & ((1 << (last - 1)) - 1));
  }

  function rowFor(set: number): number {
    const known = rowOf[set]!;
    if (known > 0) return known;
    const row = sets.push(set) - 1;
    rowOf[set] = row;
    firstOf.push(cells);
    const until = cells + bitCount(set);
    if (until > ends.length) {
      ends = widened(ends);
      travels = widened(travels);
    }
    ends.fill(never, cells, until);
    travels.fill(never, cells, until);
    cells = until;
    return row;
  }

  return {
    sets,
    rowOf: (set) => rowOf[set]!,
    endAt: (row, last) => ends[cellOf(row, last)]!,
    travelAt: (row, last) => travels[cellOf(row, last)]!,
    tell: (set, last, endMs, travelMs) => {
      const cell = cellOf(rowFor(set), last);
      if (endMs < ends[cell]!) ends[cell] = endMs;
      if (travelMs < travels[cell]!) travels[cell] = travelMs;
    },
  };
}

function widened(row: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const wide = new Float64Array(row.length * 2);
  wide.set(row);
  return wide;
}

/** How many bits of a set of at most 32 are 1: pairs, then fours, then eights are added side by side. */
function bitCount(set: number): number {
  const pairs = set - ((set >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
