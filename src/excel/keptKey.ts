/** The settings of a workbook are this add-in's own, yet its next version may keep others: a prefix tells them apart. */
export function keptKey(key: string): string {
  return `tackstitch.${key}`;
}
