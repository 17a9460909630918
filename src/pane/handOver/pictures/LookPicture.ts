/** A picture picked by hand for a look, drawn anew so that nothing but what is to be seen is in it. */
export interface LookPicture {
  /** The name of the file it came from. */
  readonly fileName: string;
  /** JPEG as a data address. */
  readonly dataUrl: string;
}
