import { inCopyStore } from "./inCopyStore";
import { keptCopyKey } from "./keptCopyKey";
import type { KeptCopy } from "./KeptCopy";

/** Keeps one copy in this browser, on this computer. */
export async function writeKeptCopy(copy: KeptCopy): Promise<void> {
  await inCopyStore("readwrite", (store) => store.put(copy, keptCopyKey));
}
