import { requestNotCollected } from "../../../src/checks/rules/requestNotCollected";
import { day } from "../day";
import { testRule } from "../testRule";

const requests = ["Lender", "Asked", "Needed by", "Answer", "Answered", "Collected"];
const asked = day("2026-03-03");
const monday = day("2026-03-09");

testRule(requestNotCollected, {
  clean: [
    {
      title: "what is collected, or was refused, or is not answered yet",
      tables: {
        requests: [
          requests,
          ["Halden", asked, monday, "yes", null, day("2026-03-04")],
          ["Halden", asked, monday, "yes", null, "x"],
          ["Halden", asked, monday, "no", null, null],
          ["Halden", asked, monday, "waiting", null, null],
          ["Halden", asked, monday, null, null, null],
        ],
      },
    },
    {
      title: "a need that is not near, is not known, or is long past",
      tables: {
        requests: [
          requests,
          ["Halden", asked, day("2026-03-10"), "yes", null, null],
          ["Halden", asked, null, "yes", null, null],
          ["Halden", asked, day("2026-01-10"), "yes", null, null],
        ],
      },
    },
    {
      title: "a table that keeps no such column",
      tables: {
        requests: [
          ["Lender", "Asked", "Needed by", "Answer"],
          ["Halden", asked, monday, "yes"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "yes, in part, or answered on a day, and the need is near",
      tables: {
        requests: [
          requests,
          ["Halden", asked, monday, "yes", null, null],
          ["Halden", asked, day("2026-03-05"), "part", null, "no"],
          ["Halden", asked, monday, null, day("2026-03-04"), null],
        ],
      },
      expect: [
        { at: "requests!F2", messageId: "near", data: { needed: "2026-03-09" } },
        { at: "requests!F3", messageId: "near", data: { needed: "2026-03-05" } },
        { at: "requests!F4", messageId: "near" },
      ],
    },
    {
      title: "a need that is past",
      tables: { requests: [requests, ["Halden", asked, day("2026-03-04"), "yes", null, null]] },
      expect: [{ at: "requests!F2", messageId: "past", data: { needed: "2026-03-04" } }],
    },
  ],
});
