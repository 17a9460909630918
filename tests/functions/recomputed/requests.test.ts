// CHASEROWS and REFUNDS worked out a second time, row by row, from what their documentation promises.
import fc from "fast-check";
import { standInHost } from "../standInHost";
import { asShown } from "./asShown";
import { drawnFrom, type Drawn } from "./drawn";
import { resultOf } from "./resultOf";
import { typedAmount } from "./typedAmount";
import { typedDay } from "./typedDay";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

const DAY = 46_100;

function forCases(holds: (draw: Drawn) => void): void {
  fc.assert(
    fc.property(fc.gen(), (value) => holds(drawnFrom(value))),
    { numRuns: 200, endOnFailure: true },
  );
}

/** The rows under their headings, in an order of columns of its own, with a blank row here and there. */
function sheetOf(
  draw: Drawn,
  rows: readonly Readonly<Record<string, unknown>>[],
  headings: readonly string[],
): { readonly headings: readonly string[]; readonly cells: unknown[][]; readonly typed: readonly unknown[][] } {
  const order = draw.shuffled(headings);
  const typed = rows.map((row) => order.map((heading) => row[heading] ?? draw.one([null, ""])));
  const cells = [order, ...typed.flatMap((row) => (draw.often(10) ? [order.map(() => null), row] : [row]))];
  return { headings: order, cells, typed };
}

test("CHASEROWS: unanswered for as many working days as one waits, or answered, not collected and soon needed", () => {
  forCases((draw) => {
    const closed = Array.from({ length: draw.whole(0, 3) }, () => DAY + draw.whole(-8, 12));
    // 46100 was a Thursday.
    const isOpen = (day: number): boolean => (((day - DAY + 3) % 7) + 7) % 7 < 5 && !closed.includes(day);
    const openDays = (after: number, until: number): number => {
      let count = 0;
      for (let day = after + 1; day <= until; day++) if (isOpen(day)) count++;
      return count;
    };
    const given = draw.one([null, 0, 1, 2, 4]);
    const patience = given ?? 2;
    const meant = Array.from({ length: draw.whole(0, 8) }, () => ({
      asked: draw.often(90) ? DAY - draw.whole(-2, 9) : null,
      needed: draw.often(85) ? DAY + draw.whole(-4, 12) : null,
      answer: draw.one([null, "waiting", "yes", "Yes", "no", "part"]),
      collected: draw.often(15) ? DAY - 1 : null,
    }));
    const { headings, cells, typed } = sheetOf(
      draw,
      meant.map(({ asked, needed, answer, collected }) => ({
        Asked: asked === null ? null : typedDay(draw, asked),
        "Needed by": needed === null ? null : typedDay(draw, needed),
        Answer: answer,
        Collected: collected,
      })),
      ["Asked", "Needed by", "Answer", "Collected", "Lender"],
    );
    const places = meant.flatMap(({ asked, needed, answer, collected }, place) => {
      if (collected !== null || answer === "no") return [];
      const isUnanswered = answer === null || answer === "waiting";
      const isChased = isUnanswered
        ? asked !== null && asked <= DAY && openDays(asked, DAY) >= patience
        : needed !== null && openDays(DAY, needed) <= patience;
      return isChased ? [place] : [];
    });
    places.sort((a, b) => (meant[a]!.needed ?? Infinity) - (meant[b]!.needed ?? Infinity) || a - b);
    expect(resultOf("CHASEROWS", cells, DAY, given, closed.length === 0 ? null : closed.map((day) => [day]))).toEqual([
      headings,
      ...asShown(places.map((place) => typed[place]!)),
    ]);
  });
});

test("REFUNDS: what is still to come back by each receipt's last day, the soonest first and those without one last", () => {
  forCases((draw) => {
    const meant = Array.from({ length: draw.whole(0, 8) }, (_, index) => {
      const cents = draw.whole(1, 50_000);
      const kept = draw.one([null, "yes", "no", Math.floor(cents / 2) / 100]);
      const keptCents = kept === "yes" ? cents : typeof kept === "number" ? Math.floor(cents / 2) : 0;
      const refunded = draw.often(30) ? DAY + draw.whole(-5, 2) : null;
      const part = refunded !== null && draw.often(50) ? Math.max(1, Math.floor((cents - keptCents) / 2)) : null;
      const bought = draw.often(90) ? DAY - draw.whole(0, 30) : null;
      return { index, shop: `S${index}`, cents, kept, keptCents, refunded, part, bought, days: draw.one([14, 28]) };
    });
    const { cells } = sheetOf(
      draw,
      meant.map(({ shop, cents, kept, refunded, part, bought, days }) => ({
        Shop: shop,
        Amount: typedAmount(draw, cents),
        Bought: bought === null ? null : typedDay(draw, bought),
        Terms: draw.one([days, `${days} days`, `${days} days from receipt`]),
        Kept: kept,
        Refunded: refunded === null ? null : typedDay(draw, refunded),
        "Amount refunded": part === null ? null : part / 100,
      })),
      ["Shop", "Amount", "Bought", "Terms", "Kept", "Refunded", "Amount refunded"],
    );
    const open = meant.flatMap(({ index, shop, cents, keptCents, refunded, part, bought, days }) => {
      const isRefunded = refunded !== null && refunded <= DAY;
      const toCome = cents - keptCents - (isRefunded ? (part ?? cents - keptCents) : 0);
      const by = bought === null ? null : bought + days;
      return toCome > 0 ? [{ index, shop, by, toCome: toCome / 100 }] : [];
    });
    open.sort((a, b) => (a.by ?? Infinity) - (b.by ?? Infinity) || a.index - b.index);
    expect(resultOf("REFUNDS", cells, DAY)).toEqual([
      ["Shop", "Refund by", "Days left", "To come back"],
      ...open.map(({ shop, by, toCome }) => [shop, by ?? "", by === null ? "" : by - DAY, toCome]),
    ]);
  });
});
