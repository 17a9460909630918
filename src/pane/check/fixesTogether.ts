import type { CellEdit } from "../../sheet/cellEdit";
import type { OpenFinding } from "./OpenFinding";

/** The edits of several fixes as one step. */
export interface FixesTogether {
  readonly edits: readonly CellEdit[];
  /** Findings whose fix is left for a second go, since it would write a cell that another one writes. */
  readonly leftOut: number;
}

/** Every fix among the findings as one step that names no cell twice. */
export function fixesTogether(findings: readonly OpenFinding[]): FixesTogether {
  const taken = new Set<string>();
  const edits: CellEdit[] = [];
  let leftOut = 0;
  for (const { finding } of findings) {
    if (finding.fix === undefined) continue;
    const places = finding.fix.edits.map(({ at }) => `${at.sheetId} ${at.row} ${at.column}`);
    if (places.some((place) => taken.has(place))) {
      leftOut += 1;
      continue;
    }
    for (const place of places) taken.add(place);
    edits.push(...finding.fix.edits);
  }
  return { edits, leftOut };
}
