import type { HandOverFile } from "./HandOverFile";

/** How long the browser may take to begin with a file before its bytes are let go. */
const KEPT_MILLISECONDS = 30_000;

/** Hands a file to the browser, to be kept where its user keeps files. */
export function saveFile({ name, type, content }: HandOverFile): void {
  const bytes = typeof content === "string" ? content : new Uint8Array(content);
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MILLISECONDS);
}
