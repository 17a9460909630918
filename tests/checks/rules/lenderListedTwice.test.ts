import { lenderListedTwice } from "../../../src/checks/rules/lenderListedTwice";
import { testRule } from "../testRule";

testRule(lenderListedTwice, {
  clean: [
    { title: "each lender once", tables: { lenders: [["Lender"], ["Maison Orla"], ["Halden"], ["Maison Ola"]] } },
    {
      title: "blank names",
      tables: {
        lenders: [
          ["Lender", "Contact"],
          [null, "Ines"],
          [null, "Mo"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a lender on two rows, however written",
      tables: { lenders: [["Lender"], ["Maison Orla"], ["Halden"], ["MAISON ORLA "]] },
      expect: [{ at: "lenders!A4", messageId: "twice", data: { lender: "MAISON ORLA", cell: "A2" } }],
    },
  ],
});
