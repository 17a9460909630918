import type { SheetChange } from "../sheet/SheetPort";

/** Gathered changes of one sheet beyond this many areas are told as the whole sheet: a paste or a recalculation. */
const MOST_AREAS = 40;

/**
 * Gathers changes and tells them together, `milliseconds` after the first of them, so that a burst is one call.
 *
 * `add` takes a change, `stop` forgets what is waiting.
 */
export function gatherChanges(
  tell: (changes: readonly SheetChange[]) => void,
  milliseconds: number,
): { add(change: SheetChange): void; stop(): void } {
  let waiting: SheetChange[] = [];
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    add(change) {
      waiting.push(change);
      timer ??= setTimeout(() => {
        const told = withoutRepeats(waiting);
        timer = undefined;
        waiting = [];
        tell(told);
      }, milliseconds);
    },
    stop() {
      clearTimeout(timer);
      timer = undefined;
      waiting = [];
    },
  };
}

function withoutRepeats(changes: readonly SheetChange[]): SheetChange[] {
  return [...new Set(changes.map((change) => change.sheetId))].flatMap((sheetId): SheetChange[] => {
    const own = changes.filter((change) => change.sheetId === sheetId);
    const sheetsChanged = own.some((change) => change.sheetsChanged);
    const areas = new Map(own.map((change) => [JSON.stringify(change.area), change.area]));
    if (sheetsChanged || areas.has("null") || areas.size > MOST_AREAS) return [{ sheetId, area: null, sheetsChanged }];
    return [...areas.values()].map((area) => ({ sheetId, area, sheetsChanged }));
  });
}
