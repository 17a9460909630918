import { elementsOf } from "./elementsOf";
import { filterXml } from "./filterXml";
import { insertBefore } from "./insertBefore";
import type { SavingFilter } from "./SavingFilter";

/** What stands after the cells of a sheet, with this filter in place of the one it had; null takes it away. */
export function filterPatch(after: string, filter: SavingFilter | null, prefix: string): string {
  // Views that somebody keeps for themselves may hold filters of their own.
  const views = elementsOf(after, "customSheetViews")[0] ?? "";
  const held = elementsOf(after.replace(views, ""), "autoFilter")[0];
  const without = held === undefined ? after : after.replace(held, "");
  return filter === null ? without : insertBefore(without, "autoFilter", filterXml(filter, prefix));
}
