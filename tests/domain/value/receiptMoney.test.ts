import fc from "fast-check";
import type { Problem } from "../../../src/domain/problem";
import { receiptMoney } from "../../../src/domain/value/receiptMoney";
import type { ReceiptRow } from "../../../src/domain/value/receiptRow";
import { receiptRowOf } from "./receiptRowOf";

const unread: Problem = { reason: "error-in-cell", facts: { argument: "Kept, row 2", given: "#N/A" } };

/** Spent, kept, refunded and to come back in whole units. */
function moneyOf(fields: Partial<ReceiptRow>, asOf = 100) {
  const { spent, kept, refunded, toComeBack } = receiptMoney(receiptRowOf(fields), asOf);
  return [spent, kept, refunded, toComeBack].map((figure) => (typeof figure === "number" ? figure / 10_000 : figure));
}

test.each<[title: string, fields: Partial<ReceiptRow>, expected: readonly number[]]>([
  ["nothing said: all is to come back", { amount: 90 }, [90, 0, 0, 90]],
  ["an amount kept", { amount: 90, kept: 30.5 }, [90, 30.5, 0, 59.5]],
  ["all kept", { amount: 90, kept: true }, [90, 90, 0, 0]],
  ["nothing kept", { amount: 90, kept: false }, [90, 0, 0, 90]],
  ["a part refunded, on a day or on none", { amount: 90, kept: 30, amountRefunded: 20 }, [90, 30, 20, 40]],
  ["refunded with no amount: all that is not kept", { amount: 90, kept: 30, refunded: 99 }, [90, 30, 60, 0]],
  ["refunded, no day given", { amount: 90, refunded: true }, [90, 0, 90, 0]],
  ["said not to be refunded", { amount: 90, refunded: false }, [90, 0, 0, 90]],
  ["refunded with an amount: that amount", { amount: 90, refunded: 99, amountRefunded: 20 }, [90, 0, 20, 70]],
  ["all kept and a part refunded: the rest is kept", { amount: 90, kept: true, amountRefunded: 20 }, [90, 70, 20, 0]],
  ["all kept, and refunded on a day: kept", { amount: 90, kept: true, refunded: 99 }, [90, 90, 0, 0]],
  ["more back than was paid", { amount: 90, amountRefunded: 100 }, [90, 0, 100, -10]],
  ["all kept and more back than was paid", { amount: 90, kept: true, amountRefunded: 100 }, [90, 0, 100, -10]],
  ["an amount that is blank", {}, [0, 0, 0, 0]],
])("%s", (_, fields, expected) => {
  expect(moneyOf(fields)).toEqual(expected);
});

test("a refund dated after the day has not come back yet", () => {
  expect(moneyOf({ amount: 90, refunded: 101, amountRefunded: 90 }, 100)).toEqual([90, 0, 0, 90]);
  expect(moneyOf({ amount: 90, refunded: 101, amountRefunded: 90 }, 101)).toEqual([90, 0, 90, 0]);
});

test("a cell that cannot be read spoils the figures that need it, and no others", () => {
  expect(moneyOf({ amount: 90, kept: unread })).toEqual([90, unread, 0, unread]);
  expect(moneyOf({ amount: unread, kept: 30 })).toEqual([unread, 30, 0, unread]);
  expect(moneyOf({ amount: 90, kept: 30, refunded: unread })).toEqual([90, 30, unread, unread]);
  expect(moneyOf({ amount: 90, kept: true, amountRefunded: unread })).toEqual([90, unread, unread, unread]);
});

test("what comes back is always what was spent less kept less refunded, to the cent", () => {
  const cents = fc.option(fc.integer({ min: 1, max: 1_000_000 }).map((amount) => amount / 100));
  const fields = fc.record({
    amount: cents,
    kept: fc.oneof(cents, fc.boolean()),
    refunded: fc.option(fc.oneof(fc.integer({ min: 95, max: 105 }), fc.boolean())),
    amountRefunded: cents,
  });
  fc.assert(
    fc.property(fields, (receipt) => {
      const { spent, kept, refunded, toComeBack } = receiptMoney(receiptRowOf(receipt), 100);
      expect((spent as number) - (kept as number) - (refunded as number)).toBe(toComeBack);
      for (const figure of [spent, kept, refunded] as number[]) {
        expect(figure).toBeGreaterThanOrEqual(0);
        expect(Math.abs(figure % 100)).toBe(0);
      }
    }),
  );
});
