import { isProblem } from "../isProblem";
import type { Problem } from "../problem";
import type { ReceiptRow } from "./receiptRow";
import { tenThousandths } from "./tenThousandths";

/** What became of the money of one receipt, in ten-thousandths; a figure is a problem where a cell it needs cannot be read. */
interface ReceiptMoney {
  readonly spent: number | Problem;
  readonly kept: number | Problem;
  readonly refunded: number | Problem;
  /** Spent less kept less refunded; below 0 where more came back than was paid. */
  readonly toComeBack: number | Problem;
}

/**
 * What a receipt was for, what of it is kept, what was refunded by a day, and what is still to come back.
 *
 * A refund dated after that day has not come back yet. A refund without an amount is all that is not kept; Kept "yes" is
 * all that is not refunded.
 */
export function receiptMoney(receipt: ReceiptRow, asOf: number): ReceiptMoney {
  const { amount, kept: given } = receipt;
  const spent = isProblem(amount) ? amount : tenThousandths(amount ?? 0);
  const keptAmount = typeof given === "number" ? tenThousandths(given) : isProblem(given) ? given : 0;
  const refunded = refundedBy(receipt, asOf, given === true ? 0 : restOf(spent, keptAmount));
  const kept = given === true ? restOf(spent, refunded) : keptAmount;
  return { spent, kept, refunded, toComeBack: less(less(spent, kept), refunded) };
}

/** What was refunded; `all` is what a refund without an amount comes to. */
function refundedBy(receipt: ReceiptRow, asOf: number, all: number | Problem): number | Problem {
  const { refunded } = receipt;
  if (isProblem(refunded)) return refunded;
  if (typeof refunded === "number" && refunded > asOf) return 0;
  const { amountRefunded } = receipt;
  if (isProblem(amountRefunded)) return amountRefunded;
  if (amountRefunded !== null) return tenThousandths(amountRefunded);
  return refunded === null || refunded === false ? 0 : all;
}

function restOf(one: number | Problem, other: number | Problem): number | Problem {
  const rest = less(one, other);
  return isProblem(rest) ? rest : Math.max(0, rest);
}

function less(one: number | Problem, other: number | Problem): number | Problem {
  if (isProblem(one)) return one;
  return isProblem(other) ? other : one - other;
}
