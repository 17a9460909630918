/** Whether this Excel knows a requirement set of the ExcelApi, such as "1.12"; older ones do without what it brings. */
export function hasExcelApi(version: string): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", version);
}
