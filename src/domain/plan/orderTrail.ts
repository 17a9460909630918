/** The things of an order so far, from the last back to the first, so that many orders can share one beginning. */
export interface OrderTrail {
  readonly thing: number;
  readonly before: OrderTrail | null;
}
