import { defineRule } from "../defineRule";

export const dateSystem1904 = defineRule({
  id: "dateSystem1904",
  about: "A workbook that counts its days from 1904, as old files from a Mac do.",
  why: "Every date reads four years and a day too early in the functions here.",
  severity: "error",
  fixable: false,
  scope: "workbook",
  tables: ["pieces", "requests", "lenders", "looks", "day", "stops", "receipts", "shoes"],
  messages: {
    from1904:
      "This workbook counts days from 1904, so dates are read 1462 days early. Copy the sheets into a new workbook, then correct the dates.",
  },
  check(workbook, report) {
    const table = workbook.tables[0];
    if (workbook.dateSystem !== 1904 || table === undefined) return;
    report({ row: { table, row: table.headingRow }, field: "", messageId: "from1904", data: {} });
  },
});
