import { keepsRules } from "../../../src/domain/plan/keepsRules";
import type { OrderRules } from "../../../src/domain/plan/orderRules";

/** Every order of the things, one by one, that keeps the rules. */
export function ordersKeeping(rules: OrderRules): number[][] {
  const orders: number[][] = [];
  const grow = (order: readonly number[], left: readonly number[]): void => {
    if (left.length === 0 && keepsRules(rules, order)) orders.push([...order]);
    for (const thing of left)
      grow(
        [...order, thing],
        left.filter((other) => other !== thing),
      );
  };
  grow(
    [],
    rules.before.map((_, thing) => thing),
  );
  return orders;
}
