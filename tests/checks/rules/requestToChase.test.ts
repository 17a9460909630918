import { requestToChase } from "../../../src/checks/rules/requestToChase";
import { day } from "../day";
import { testRule } from "../testRule";

const requests = ["Lender", "Asked", "Needed by", "Answer", "Answered", "Collected"];
/** Tuesday, two working days before the Thursday of the check. */
const tuesday = day("2026-03-03");
const wednesday = day("2026-03-04");
const far = day("2026-03-20");

testRule(requestToChase, {
  clean: [
    {
      title: "a request asked less than two working days ago",
      tables: { requests: [requests, ["Halden", wednesday, far, null, null, null]] },
    },
    {
      title: "answered requests, by a word or a day",
      tables: {
        requests: [
          requests,
          ["Halden", tuesday, far, "yes", null, null],
          ["Halden", tuesday, far, "no", null, null],
          ["Halden", tuesday, far, null, wednesday, null],
          ["Halden", tuesday, far, null, "yesterday", null],
          ["Halden", tuesday, far, null, null, wednesday],
        ],
      },
    },
    {
      title: "a request of a job that is long over",
      tables: {
        requests: [
          requests,
          ["Halden", day("2025-12-01"), day("2025-12-10"), null, null, null],
          ["Halden", day("2025-12-01"), null, "waiting", null, null],
          ["Halden", null, day("2025-12-10"), null, null, null],
        ],
      },
    },
    {
      title: "a lender who is closed on the days between",
      tables: {
        requests: [requests, ["Halden", tuesday, far, null, null, null]],
        lenders: [
          ["Lender", "Closed weekdays"],
          ["Halden", "Wed, Sat, Sun"],
        ],
      },
    },
    {
      title: "a request not asked yet while the need is far, or asked on a day that cannot be read",
      tables: {
        requests: [
          requests,
          ["Halden", null, far, null, null, null],
          ["Halden", "last week", day("2026-03-06"), null, null, null],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a request that has waited two working days, answer blank or waiting",
      tables: {
        requests: [
          requests,
          ["Halden", tuesday, far, null, null, null],
          ["Halden", tuesday, null, "waiting", wednesday, null],
        ],
      },
      expect: [
        { at: "requests!D2", messageId: "unanswered", data: { asked: "2026-03-03" } },
        { at: "requests!D3", messageId: "unanswered" },
      ],
    },
    {
      title: "one whose need is past",
      tables: { requests: [requests, ["Halden", day("2026-02-23"), wednesday, "no reply yet", null, null]] },
      expect: [{ at: "requests!D2", messageId: "needPast", data: { asked: "2026-02-23", needed: "2026-03-04" } }],
    },
    {
      title: "one that was not sent though the need is near",
      tables: { requests: [requests, ["Halden", null, day("2026-03-09"), null, null, null]] },
      expect: [{ at: "requests!B2", messageId: "notAsked", data: { needed: "2026-03-09" } }],
    },
  ],
});
