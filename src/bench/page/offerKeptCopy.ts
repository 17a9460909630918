import { dropKeptCopy } from "./dropKeptCopy";
import { notice } from "./notice";
import { readKeptCopy } from "./readKeptCopy";

/** Offers what an earlier visit left unsaved. */
export async function offerKeptCopy(restore: (bytes: Uint8Array, fileName: string) => Promise<void>): Promise<void> {
  const copy = await readKeptCopy();
  if (copy === null) return;
  const when = new Date(copy.keptAt).toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" });
  notice(`"${copy.fileName}" was changed and not saved; a copy was kept on ${when}.`, [
    { label: "Open the copy", run: () => void restore(copy.bytes, copy.fileName) },
    { label: "Discard it", run: () => void dropKeptCopy() },
  ]);
}
