/** The tables a stylist keeps; which headings belong to which stands in shared/headings.json. */
export type TableKind = "pieces" | "requests" | "lenders" | "looks" | "day" | "stops" | "receipts" | "shoes";
