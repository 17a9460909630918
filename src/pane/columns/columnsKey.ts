/** The key under which the workbook keeps how its headings are read. */
export const columnsKey = "columns";
