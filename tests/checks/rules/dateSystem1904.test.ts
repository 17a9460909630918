import { dateSystem1904 } from "../../../src/checks/rules/dateSystem1904";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(dateSystem1904, {
  clean: [
    {
      title: "a workbook that counts from 1900",
      tables: {
        pieces: [
          ["Piece", "Out"],
          ["P1", day("2026-03-02")],
        ],
      },
    },
    { title: "a workbook without a table that can be read", tables: {}, dateSystem: 1904 },
  ],
  findings: [
    {
      title: "a workbook that counts from 1904, once",
      tables: {
        pieces: [
          ["Piece", "Out"],
          ["P1", day("2026-03-02") - 1462],
        ],
        lenders: [["Lender"], ["Halden"]],
      },
      dateSystem: 1904,
      expect: [{ at: "pieces!A1", messageId: "from1904" }],
    },
  ],
});
