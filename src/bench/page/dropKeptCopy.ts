import { inCopyStore } from "./inCopyStore";
import { keptCopyKey } from "./keptCopyKey";

/** Forgets the copy, since the file is saved or the user wants none of it. */
export async function dropKeptCopy(): Promise<void> {
  await inCopyStore("readwrite", (store) => store.delete(keptCopyKey));
}
