import { useEffect, useRef, useState } from "react";
import { sayProblem } from "../../../domain/wording";
import { cellName } from "../../../sheet/cellName";
import type { WorkbookSnapshot } from "../../../sheet/sheetSnapshot";
import { usePane } from "../../frame/usePane";
import { sayCount } from "../../sayCount";
import { blobOfDataUrl } from "./blobOfDataUrl";
import { redrawnPicture } from "./redrawnPicture";
import type { SheetPictureShown } from "./SheetPictureShown";

interface SheetPictures {
  readonly shown: readonly SheetPictureShown[];
  readonly isReading: boolean;
  /** What could not be shown, a sentence each. */
  readonly missing: readonly string[];
}

const NONE: SheetPictures = { shown: [], isReading: false, missing: [] };

/**
 * The pictures of the workbook, while they are wanted. They are listed again whenever the workbook was read again; each is
 * asked of the host and drawn anew once, since that is the costly part.
 */
export function useSheetPictures(isWanted: boolean, workbook: WorkbookSnapshot | null): SheetPictures {
  const { listPictures, showPictures } = usePane().actions;
  const [pictures, setPictures] = useState<SheetPictures>(NONE);
  /** By key; null for one that no browser shows. */
  const drawn = useRef(new Map<string, string | null>());
  useEffect(() => {
    if (!isWanted || workbook === null) return undefined;
    let isLeft = false;
    const read = async (): Promise<void> => {
      const listed = await listPictures();
      if (isLeft) return;
      if (!listed.ok) return setPictures({ ...NONE, missing: [sayProblem(listed.problem)] });
      const unseen = listed.value.filter(({ key }) => !drawn.current.has(key)).map(({ key }) => key);
      if (unseen.length > 0) {
        setPictures((before) => ({ ...before, isReading: true }));
        const given = await showPictures(unseen);
        if (isLeft) return;
        if (!given.ok) return setPictures({ ...NONE, missing: [sayProblem(given.problem)] });
        // One after the other: many large pictures at once would fill a small machine's memory.
        for (const key of unseen) {
          const blob = blobOfDataUrl(given.value.get(key) ?? "");
          drawn.current.set(key, blob === null ? null : ((await redrawnPicture(blob, key))?.dataUrl ?? null));
          if (isLeft) return;
        }
      }
      const shown: SheetPictureShown[] = [];
      const unread: string[] = [];
      for (const { key, at, name } of listed.value) {
        const dataUrl = drawn.current.get(key) ?? null;
        if (dataUrl !== null) shown.push({ at, fileName: name, dataUrl });
        else unread.push(`${cellName(at.row, at.column)} on ${sheetName(workbook, at.sheetId)}`);
      }
      const missing =
        unread.length === 0
          ? []
          : [
              `${sayCount(unread.length, "picture", "pictures")} of a kind that cannot be shown here, at ${unread.join(", ")}: save it as PNG or JPEG and put that in its place.`,
            ];
      setPictures({ shown, isReading: false, missing });
    };
    void read();
    return () => {
      isLeft = true;
    };
  }, [isWanted, workbook, listPictures, showPictures]);
  return isWanted ? pictures : NONE;
}

function sheetName({ sheets }: WorkbookSnapshot, sheetId: string): string {
  return sheets.find((sheet) => sheet.sheetId === sheetId)?.name ?? "a sheet that is gone";
}
