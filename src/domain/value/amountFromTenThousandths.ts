/** The amount in the unit of its currency: the number nearest to the exact decimal. */
export function amountFromTenThousandths(tenThousandths: number): number {
  return tenThousandths / 10_000;
}
