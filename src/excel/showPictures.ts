import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { inExcel } from "./inExcel";
import { pictureKey } from "./pictureKey";

// Excel on the web answers at most 5 MB at a time (documented).
const CHARACTERS_PER_SYNC = 3_000_000;
/** 96 dots an inch (documented of getAsImage) make 4 pixels of 3 points; base64 writes 3 bytes as 4 characters. */
const PIXELS_A_POINT = 96 / 72;
const CHARACTERS_A_PIXEL = 3 * (4 / 3);

/**
 * What pictures show, drawn by Excel as large as they are on the sheet (documented: 96 dots an inch), as many in one
 * sync as one answer surely holds. Needs ExcelApi 1.9.
 */
export function showPictures(keys: readonly string[]): Promise<Outcome<ReadonlyMap<string, string>>> {
  return inExcel("see the pictures on the sheets", async (context) => {
    const shown = new Map<string, string>();
    const sheetIds = [...new Set(keys.map((key) => key.split("\n")[0] ?? ""))];
    const sheets = sheetIds.map((id) => context.workbook.worksheets.getItemOrNullObject(id).load("id"));
    if (sheets.length === 0) return succeed(shown);
    await context.sync();
    const collections = sheets
      .filter((sheet) => !sheet.isNullObject)
      .map((sheet) => ({
        sheetId: sheet.id,
        shapes: sheet.shapes.load("items/id,items/type,items/width,items/height"),
      }));
    await context.sync();
    const wanted = new Set(keys);
    const pictures = collections.flatMap(({ sheetId, shapes }) =>
      shapes.items.flatMap((shape) => {
        const key = pictureKey(sheetId, shape.id, shape.width, shape.height);
        if (shape.type !== "Image" || !wanted.has(key)) return [];
        const characters = shape.width * shape.height * PIXELS_A_POINT ** 2 * CHARACTERS_A_PIXEL;
        return [{ key, shape, characters }];
      }),
    );
    for (let from = 0; from < pictures.length;) {
      let until = from;
      for (let sum = 0; until < pictures.length; until++) {
        sum += pictures[until]?.characters ?? 0;
        if (until > from && sum > CHARACTERS_PER_SYNC) break;
      }
      const drawn = pictures.slice(from, until).map(({ key, shape, characters }) => {
        // A picture too large for one answer as it is comes through when it is allowed to lose a little.
        const format = characters > CHARACTERS_PER_SYNC ? "JPEG" : "PNG";
        return { key, format, image: shape.getAsImage(format) };
      });
      // eslint-disable-next-line office-addins/no-context-sync-in-loop -- one answer for all may be refused as too large
      await context.sync();
      for (const { key, format, image } of drawn)
        shown.set(key, `data:image/${format.toLowerCase()};base64,${image.value}`);
      from = until;
    }
    return succeed(shown);
  });
}
