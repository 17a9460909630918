import { Workbook } from "@cj-tech-master/excelts";

type Line = readonly (string | number | null)[];

/** The bytes of a workbook with one sheet that holds these rows and nothing else. */
export async function plainWorkbook(rows: readonly Line[], firstCell = "A1"): Promise<Uint8Array> {
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet("Sheet1");
  const { row, col } = sheet.getCell(firstCell);
  rows.forEach((line, down) =>
    line.forEach((value, across) => {
      sheet.getCell(Number(row) + down, Number(col) + across).value = value;
    }),
  );
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}
