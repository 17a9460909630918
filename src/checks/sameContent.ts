/** Whether two readings of one cell hold the same; two readings of a sheet bring two objects for one error. */
export function sameContent(was: unknown, is: unknown): boolean {
  if (was === is || Object.is(was, is)) return true;
  if (typeof was !== "object" || typeof is !== "object" || was === null || is === null) return false;
  const before = (was as { error?: unknown }).error;
  return typeof before === "string" && before === (is as { error?: unknown }).error;
}
