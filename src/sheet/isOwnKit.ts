// Common practice, no source: what stands in the Lender column of a piece that nobody lent, in the five languages of the headings.
const OWN =
  /^(?:(?:my |stylist'?s |our )?own(?: kit| stock| piece)?|mine|ours|self|(?:my |stylist'?s |own )?kit|stylist|personal|perso|propre|propio|propia|proprio|propria|eigen|eigenes|eigene)$/;

/** Whether a lender's cell says that the piece is the stylist's own: "own", "kit", "mine". */
export function isOwnKit(lender: string): boolean {
  return OWN.test(lender.trim().toLowerCase().replaceAll("’", "'"));
}
