import { fail } from "../../domain/fail";
import type { Outcome } from "../../domain/outcome";
import { holdsExpected } from "../../sheet/holdsExpected";
import { listCells } from "../../sheet/listCells";
import type { TargetCell } from "./targetCell";

/** Why a step must not be written, or null. Of several sheets the first with a reason counts, with all its cells. */
export function refuseStep(targets: readonly TargetCell[]): Outcome<never> | null {
  for (const sheet of new Set(targets.map((target) => target.sheet))) {
    const own = targets.filter((target) => target.sheet === sheet);
    const facts = (cells: readonly TargetCell[]) => ({
      sheet: sheet.getName(),
      cells: listCells(cells.map(({ edit }) => edit.at)),
    });
    const changed = own.filter((target) => !holdsExpected(target.edit, target));
    if (changed.length > 0) return fail("cells-changed", facts(changed));
    const merged = own.filter((target) => target.merged);
    if (merged.length > 0) return fail("cells-merged", facts(merged));
    const spilled = own.filter((target) => target.spilled);
    if (spilled.length > 0) return fail("cells-spilled", facts(spilled));
  }
  return null;
}
