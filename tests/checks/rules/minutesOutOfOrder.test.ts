import { minutesOutOfOrder } from "../../../src/checks/rules/minutesOutOfOrder";
import { testRule } from "../testRule";

const looks = ["Look", "Low", "Likely", "High"];

testRule(minutesOutOfOrder, {
  clean: [
    { title: "minutes in order, or equal", tables: { looks: [looks, [1, 5, 10, 20], [2, 10, 10, 10]] } },
    { title: "blanks between", tables: { looks: [looks, [1, 5, null, 20], [2, null, 10, null]] } },
    { title: "a time of day, which another rule reports", tables: { looks: [looks, [1, 5, 10 / 1440, 20]] } },
  ],
  findings: [
    {
      title: "minutes out of order, once a row",
      tables: { looks: [looks, [1, 15, 10, 20], [2, 5, 30, 20], [3, 25, null, 20]] },
      expect: [
        { at: "looks!B2", messageId: "outOfOrder", data: { first: "Low", less: 15, second: "Likely", more: 10 } },
        { at: "looks!C3", messageId: "outOfOrder", data: { first: "Likely", less: 30, second: "High", more: 20 } },
        { at: "looks!B4", messageId: "outOfOrder", data: { first: "Low", second: "High" } },
      ],
    },
  ],
});
