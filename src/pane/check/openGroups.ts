import type { CheckState } from "./CheckState";
import type { SeverityGroup } from "./groupFindings";

/** So few findings are shown at once, whatever their severity. */
const FEW = 12;

/** The groups that stand open: what was opened by hand, else all where there are few findings, else the most serious severity. */
export function openGroups(groups: readonly SeverityGroup[], isOpen: CheckState["isOpen"]): ReadonlySet<string> {
  const total = groups.reduce((sum, { count }) => sum + count, 0);
  const open = new Set<string>();
  groups.forEach(({ rules }, index) => {
    for (const { id } of rules) if (isOpen[id] ?? (total <= FEW || index === 0)) open.add(id);
  });
  return open;
}
