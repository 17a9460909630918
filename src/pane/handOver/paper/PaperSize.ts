/** The two sizes of paper that printers are loaded with. */
export type PaperSize = "A4" | "Letter";
