/** How a value stands to the limit of its cover. Equal is not over. */
export type AgainstCover =
  | { readonly is: "no limit" }
  | { readonly is: "within"; readonly limit: number; readonly left: number; readonly share: number }
  | { readonly is: "over"; readonly limit: number; readonly overBy: number };

/** Compares to the cent, since sums of typed figures carry no smaller part. */
export function againstCover(valueOut: number, limit: number | null): AgainstCover {
  if (limit === null) return { is: "no limit" };
  const cents = Math.round(limit * 100) - Math.round(valueOut * 100);
  if (cents < 0) return { is: "over", limit, overBy: -cents / 100 };
  return { is: "within", limit, left: cents / 100, share: valueOut / limit };
}
