import { existsSync, readdirSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";

/** A build leaves about 350 MB; with every change a little more is kept that nothing asks for again. */
const MOST_BYTES = 600 * 1024 * 1024;

/** Throws a bundler's cache away once it has grown too large: the next build takes ten seconds longer and starts it anew. */
export function limitCache(folder, mostBytes = MOST_BYTES) {
  if (!existsSync(folder)) return;
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const bytes = files.reduce((sum, entry) => sum + sizeOf(join(entry.parentPath ?? entry.path, entry.name)), 0);
  if (bytes > mostBytes) rmSync(folder, { recursive: true, force: true });
}

/** A file of another build may go while it is being looked at. */
function sizeOf(path) {
  return statSync(path, { throwIfNoEntry: false })?.size ?? 0;
}
