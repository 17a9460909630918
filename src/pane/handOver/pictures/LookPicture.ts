/** A picture picked by hand or taken from a sheet, drawn anew so that nothing but what is to be seen is in it. */
export interface LookPicture {
  /** The name of the file it came from, or what the workbook calls it. */
  readonly fileName: string;
  /** JPEG as a data address. */
  readonly dataUrl: string;
}
