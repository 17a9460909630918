import { sayCount } from "../../src/pane/sayCount";
import { sayDay } from "../../src/pane/sayDay";
import { sayList } from "../../src/pane/sayList";
import { sayMinutes } from "../../src/pane/sayMinutes";
import { sayMoney } from "../../src/pane/sayMoney";
import { sayTableRows } from "../../src/pane/sayTableRows";
import { sayClock } from "../../src/domain/sayClock";

const words = [
  ["one of a thing", sayCount(1, "piece", "pieces"), "1 piece"],
  ["none", sayCount(0, "piece", "pieces"), "0 pieces"],
  ["a thousand", sayCount(1200, "piece", "pieces"), "1,200 pieces"],
  ["a list of one", sayList(["a"]), "a"],
  ["a list of three", sayList(["a", "b", "c"]), "a, b and c"],
  ["an empty list", sayList([]), ""],
  ["minutes below an hour", sayMinutes(35), "35 min"],
  ["whole hours", sayMinutes(120), "2 h"],
  ["hours and minutes", sayMinutes(275), "4 h 35 min"],
  ["half a minute short of the hour", sayMinutes(59.6), "1 h"],
  ["half past nine", sayClock(9.5 / 24), "09:30"],
  ["half past one the next morning", sayClock(25.5 / 24), "25:30"],
  ["a second before the hour, to the nearest minute", sayClock((10 * 3600 - 1) / 86400), "10:00"],
  ["whole money in a named currency", sayMoney(1250, "GBP"), "GBP 1,250"],
  ["pence", sayMoney(99.5, "GBP"), "GBP 99.50"],
  ["a bare sign", sayMoney(1250, "$"), "$1,250"],
  ["money without a currency", sayMoney(1250, ""), "1,250"],
  ["a day, which 2026-03-05 shows to be a Thursday", sayDay(46086), "Thu 2026-03-05"],
  [
    "tables of two kinds, those of one kind counted together",
    sayTableRows([
      { kind: "pieces", dataRows: [1, 2] },
      { kind: "lenders", dataRows: [1] },
      { kind: "pieces", dataRows: [1] },
    ]),
    "3 pieces and 1 lender",
  ],
] as const;

test.each(words)("%s is said in plain words", (_, said, expected) => {
  expect(said).toBe(expected);
});
