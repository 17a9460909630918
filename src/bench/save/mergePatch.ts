/** What may follow the merged blocks in a sheet's part (ISO/IEC 29500-1 18.3.1.99 fixes the order). */
const FOLLOWERS =
  /<(?:\w+:)?(?:phoneticPr|conditionalFormatting|dataValidations|hyperlinks|printOptions|pageMargins|pageSetup|headerFooter|rowBreaks|colBreaks|customProperties|cellWatches|ignoredErrors|smartTags|drawing|legacyDrawing|legacyDrawingHF|picture|oleObjects|controls|webPublishItems|tableParts|extLst)\b|<\/(?:\w+:)?worksheet>/;

/** What stands after the cells of a sheet, with these merged blocks in place of those it had. */
export function mergePatch(after: string, references: readonly string[], prefix: string): string {
  const without = after.replace(/<(?:\w+:)?mergeCells\b[^>]*>[\s\S]*?<\/(?:\w+:)?mergeCells>/, "");
  if (references.length === 0) return without;
  const cells = references.map((reference) => `<${prefix}mergeCell ref="${reference}"/>`).join("");
  const merged = `<${prefix}mergeCells count="${references.length}">${cells}</${prefix}mergeCells>`;
  return without.replace(FOLLOWERS, (follower) => merged + follower);
}
