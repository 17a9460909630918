/** What may stand after the cells of a sheet, in the order that ISO/IEC 29500-1 18.3.1.99 fixes. */
const ORDER =
  "sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls webPublishItems tableParts extLst".split(
    " ",
  );

/** What stands after the cells of a sheet, with one more element at the place where its kind belongs. */
export function insertBefore(after: string, name: string, xml: string): string {
  if (xml === "") return after;
  const followers = ORDER.slice(ORDER.indexOf(name) + 1);
  const next = new RegExp(`<(?:\\w+:)?(?:${followers.join("|")})\\b|</(?:\\w+:)?worksheet>`).exec(after);
  return next === null ? after + xml : after.slice(0, next.index) + xml + after.slice(next.index);
}
