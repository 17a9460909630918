import type { Finding } from "../../checks/finding";
import type { SheetTable } from "../../sheet/sheetTable";
import { findingKey } from "./findingKey";
import type { OpenFinding } from "./OpenFinding";

/** Each finding with its key, and an id that no other finding has; order is kept. */
export function nameFindings(findings: readonly Finding[], tables: readonly SheetTable[]): readonly OpenFinding[] {
  const timesMet = new Map<string, number>();
  return findings.map((finding) => {
    const key = findingKey(finding, tables);
    const nth = (timesMet.get(key) ?? 0) + 1;
    timesMet.set(key, nth);
    return { id: nth === 1 ? key : `${key} ${nth}`, key, finding };
  });
}
