/**
 * Whether a formula must be kept as one that may fill several cells. Excel would otherwise read it by the old rules,
 * by which a whole column stands for its cell in the same row. Marking one too many changes nothing.
 */
export function isArrayFormula(formula: string): boolean {
  const withoutRows = formula
    .replace(/"(?:[^"]|"")*"/g, "")
    .replace(/\[\[#This Row\],\[[^\]]*\](?::\[[^\]]*\])?\]/gi, "");
  return /[:[{]/.test(withoutRows);
}
