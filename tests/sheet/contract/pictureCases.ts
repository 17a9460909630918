import type { ContractCase } from "./contractCase";
import { must, same } from "./contractSteps";

/** The smallest PNG there is: one grey point. */
const POINT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==";

/** What a port promises about the pictures of a workbook. */
export const pictureCases: readonly ContractCase[] = [
  {
    title: "tells no pictures on a sheet that has none",
    async run(port, probe) {
      const id = await probe.addSheet("Contract no pictures");
      const pictures = must(await port.listPictures(), "listing the pictures");
      same(
        pictures.filter(({ at }) => at.sheetId === id),
        [],
        "the pictures of that sheet",
      );
    },
  },
  {
    title: "tells each picture by the cell it lies over, with a key and a name, and shows it as it is",
    needs: ["addPicture"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract pictures");
      await probe.type(id, 0, 0, "Piece");
      await probe.addPicture?.(id, 3, 2, { name: "Silk coat", drawn: POINT });
      await probe.addPicture?.(id, 5, 2, { name: "Tall boots", drawn: POINT, rowCount: 4 });
      const pictures = must(await port.listPictures(), "listing the pictures").filter(({ at }) => at.sheetId === id);
      const told = pictures.map(({ at, name }) => [at.row, at.column, name]);
      same(told, [[3, 2, "Silk coat"], [5, 2, "Tall boots"]], "the pictures"); // prettier-ignore
      same(new Set(pictures.map(({ key }) => key)).size, 2, "a key for each");
      const shown = must(await port.showPictures(pictures.map(({ key }) => key)), "showing the pictures");
      for (const { key } of pictures) same(shown.get(key), `data:image/png;base64,${POINT}`, "what it shows");
      same(shown.size, 2, "nothing else");
    },
  },
  {
    title: "leaves out the pictures of a sheet that is gone, and keys that it does not know",
    needs: ["addPicture"],
    async run(port, probe) {
      const id = await probe.addSheet("Contract lost pictures");
      await probe.addPicture?.(id, 0, 0, { name: "Lost", drawn: POINT });
      const keys = must(await port.listPictures(), "listing the pictures")
        .filter(({ at }) => at.sheetId === id)
        .map(({ key }) => key);
      same(keys.length, 1, "the picture while the sheet is there");
      await probe.deleteSheet(id);
      const left = must(await port.listPictures(), "listing the pictures again");
      same(left.filter(({ at }) => at.sheetId === id).length, 0, "the picture once the sheet is gone");
      const shown = must(await port.showPictures([...keys, "no such picture"]), "showing what is gone");
      same(shown.size, 0, "what is shown of it");
    },
  },
];
