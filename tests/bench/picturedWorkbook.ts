import { Workbook } from "@cj-tech-master/excelts";
import { crc32, deflateSync } from "node:zlib";

/** A PNG of one colour (ISO/IEC 15948), each edge so many pixels long. */
export function plainPng(edgePixels: number, red: number, green: number, blue: number): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(edgePixels, 0);
  header.writeUInt32BE(edgePixels, 4);
  // Eight bits each of red, green and blue.
  header.set([8, 2, 0, 0, 0], 8);
  const line = Buffer.from([0, ...Array.from({ length: edgePixels }, () => [red, green, blue]).flat()]);
  const chunk = (type: string, data: Uint8Array) => {
    const named = Buffer.concat([Buffer.from(type, "latin1"), data]);
    const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    check.writeUInt32BE(crc32(named));
    return Buffer.concat([length, named, check]);
  };
  return new Uint8Array(
    Buffer.concat([
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
      chunk("IHDR", header),
      chunk("IDAT", deflateSync(Buffer.concat(Array.from({ length: edgePixels }, () => line)))),
      chunk("IEND", new Uint8Array()),
    ]),
  );
}

interface PicturedRow {
  readonly cells: readonly (string | number | Date | null)[];
  /** The colour of the picture that lies over the row's last column. */
  readonly picture?: readonly [red: number, green: number, blue: number];
}

/** The bytes of a workbook with sheets of rows, headings first, and pictures over the last column of some; written by a library, not by us. */
export async function picturedWorkbook(sheets: Readonly<Record<string, readonly PicturedRow[]>>): Promise<Uint8Array> {
  const workbook = new Workbook();
  for (const [name, rows] of Object.entries(sheets)) {
    const sheet = workbook.addWorksheet(name);
    rows.forEach(({ cells, picture }, index) => {
      const row = sheet.getRow(index + 1);
      row.values = [...cells];
      if (picture === undefined) return;
      row.height = 60;
      const id = workbook.addImage({ buffer: Buffer.from(plainPng(40, ...picture)), extension: "png" });
      sheet.addImage(id, { tl: { col: cells.length - 0.9, row: index + 0.1 }, ext: { width: 40, height: 60 } });
    });
  }
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}
