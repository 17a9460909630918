import { unzipSync } from "fflate";
import { fail } from "../../domain/fail";
import type { Outcome } from "../../domain/outcome";
import { succeed } from "../../domain/succeed";

/** The files inside a workbook file, by path. */
export type WorkbookParts = Readonly<Record<string, Uint8Array>>;

const MEGABYTE = 1024 * 1024;
const LARGEST_FILE_MB = 50;
/** A sheet of a hundred thousand rows unpacks to about a tenth of this; more is a file made to choke a program. */
const LARGEST_UNPACKED_MB = 400;

/** Encrypted workbooks, and those of the format before 2007, are compound files with this signature ([MS-CFB] 2.2). */
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0];
/** The signature of a zip's first local file header (APPNOTE 4.3.7). */
const ZIP = [0x50, 0x4b, 0x03, 0x04];

/**
 * The parts of a workbook file, or one sentence that says why it cannot be opened. Reads the whole size before it
 * unpacks anything, so that a small file that unpacks to a vast one is refused and not opened.
 */
export function unpackWorkbook(bytes: Uint8Array, fileName: string): Outcome<WorkbookParts> {
  const refuse = (why: string) => fail("file-not-opened", { file: fileName, why });
  if (bytes.length > LARGEST_FILE_MB * MEGABYTE) {
    return refuse(`it is larger than ${LARGEST_FILE_MB} MB; split it or delete what is not needed`);
  }
  if (startsWith(bytes, COMPOUND)) {
    return refuse("it has a password or is in the format before 2007; save it as .xlsx without a password");
  }
  if (!startsWith(bytes, ZIP)) return refuse("it is not an Excel workbook; choose a file saved as .xlsx");
  try {
    let unpackedBytes = 0;
    unzipSync(bytes, {
      filter: ({ originalSize }) => {
        unpackedBytes += originalSize;
        return false;
      },
    });
    if (unpackedBytes > LARGEST_UNPACKED_MB * MEGABYTE) {
      return refuse(`it unpacks to more than ${LARGEST_UNPACKED_MB} MB; it may be damaged or made to do harm`);
    }
    const parts = unzipSync(bytes);
    if (parts["xl/workbook.xml"] !== undefined) return succeed(parts);
    if (parts["xl/workbook.bin"] !== undefined) return refuse("it is a binary workbook; save it as .xlsx");
    return refuse("it is not an Excel workbook; choose a file saved as .xlsx");
  } catch {
    return refuse("it is damaged; open it in Excel, let it be repaired, and save it again");
  }
}

function startsWith(bytes: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((byte, index) => bytes[index] === byte);
}
