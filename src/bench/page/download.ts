const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands a workbook's bytes to the browser as a file to keep. */
export function download(bytes: Uint8Array, fileName: string): void {
  const address = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: WORKBOOK }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
