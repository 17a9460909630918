import type { IWorkbookData } from "@univerjs/core";
import { zipSync } from "fflate";
import { fail } from "../../domain/fail";
import type { Outcome } from "../../domain/outcome";
import { succeed } from "../../domain/succeed";
import type { FilePicture } from "./FilePicture";
import type { OpenedFilters } from "./OpenedFilters";
import { readBook, type Book } from "./readBook";
import { readFilters } from "./readFilters";
import { readPictures } from "./readPictures";
import { unpackWorkbook, type WorkbookParts } from "./unpackWorkbook";
import { withFilters } from "./withFilters";
import { workbookData } from "./workbookData";

/** A workbook file as it was opened: what the grid shows, and the parts that saving patches. */
export interface OpenedFile {
  readonly fileName: string;
  readonly parts: WorkbookParts;
  readonly book: Book;
  readonly data: IWorkbookData;
  /** The filters that the grid was given, by sheet. */
  readonly filters: ReadonlyMap<string, OpenedFilters>;
  /** The pictures that lie over its cells or stand in them, as it was opened. */
  readonly pictures: readonly FilePicture[];
}

/** Reads a workbook file whole, or says in one sentence why it cannot be opened. */
export async function openWorkbookFile(
  bytes: Uint8Array,
  fileName: string,
  unitId: string,
): Promise<Outcome<OpenedFile>> {
  const unpacked = unpackWorkbook(bytes, fileName);
  if (!unpacked.ok) return unpacked;
  const parts = unpacked.value;
  try {
    const { Workbook } = await import("@cj-tech-master/excelts");
    const workbook = new Workbook();
    await workbook.xlsx.load(readableParts(parts));
    const book = readBook(parts);
    if (book.sheets.every(({ path }) => path === null))
      return fail("file-not-opened", { file: fileName, why: "it has no sheet with cells" });
    const plain = workbookData(workbook, book, fileName, unitId);
    const filters = readFilters(parts, book, plain);
    const data = withFilters(plain, filters);
    return succeed({ fileName, parts, book, data, filters, pictures: readPictures(parts, book, data) });
  } catch {
    const why = "it is damaged; open it in Excel, let it be repaired, and save it again";
    return fail("file-not-opened", { file: fileName, why });
  }
}

/** Only what the reader needs, packed anew: pictures and the like stay untouched in the parts, and sizes are known. */
function readableParts(parts: WorkbookParts): Uint8Array {
  const needed = Object.entries(parts).filter(
    ([path]) => !/^(?:xl\/(?:media|drawings|charts|embeddings)|customXml)\//.test(path),
  );
  return zipSync(Object.fromEntries(needed), { level: 0 });
}
