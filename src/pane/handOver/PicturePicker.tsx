import { Button } from "@fluentui/react-components";
import { useRef, useState } from "react";
import { sayCount } from "../sayCount";
import type { LookPicture } from "./pictures/LookPicture";
import { redrawnPicture } from "./pictures/redrawnPicture";
import { useHandOverStyles } from "./useHandOverStyles";

interface PicturePickerProps {
  readonly pictures: readonly LookPicture[];
  readonly unreadFiles: readonly string[];
  /** What a file is named for. */
  readonly named: string;
  readonly picturesOnSheets: { readonly shown: readonly unknown[]; readonly isReading: boolean };
  readonly onAdded: (pictures: readonly LookPicture[], unreadFiles: readonly string[]) => void;
  readonly onCleared: () => void;
}

/** Pictures picked from the computer. They stay in the pane until it is closed and go only into the file that is saved. */
export function PicturePicker({
  pictures,
  unreadFiles,
  named,
  picturesOnSheets,
  onAdded,
  onCleared,
}: PicturePickerProps) {
  const styles = useHandOverStyles();
  const input = useRef<HTMLInputElement>(null);
  const [isReading, setIsReading] = useState(false);
  const add = async (files: readonly File[]): Promise<void> => {
    setIsReading(true);
    const added: LookPicture[] = [];
    const unread: string[] = [];
    // One after the other: many large pictures at once would fill a phone's memory.
    for (const file of files) {
      const picture = await redrawnPicture(file, file.name);
      if (picture === null) unread.push(file.name);
      else added.push(picture);
    }
    setIsReading(false);
    onAdded(added, unread);
  };
  return (
    <div>
      <input
        ref={input}
        type="file"
        accept="image/*"
        multiple
        hidden
        aria-label="Picture files"
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          currentTarget.value = "";
          if (files.length > 0) void add(files);
        }}
      />
      <div className={styles.actions}>
        <Button className={styles.action} disabledFocusable={isReading} onClick={() => input.current?.click()}>
          {isReading ? "Reading the pictures…" : "Choose pictures…"}
        </Button>
        {pictures.length > 0 && (
          <Button className={styles.action} onClick={onCleared}>
            Take the pictures out
          </Button>
        )}
      </div>
      <p className={styles.about} aria-live="polite">
        {`${sayCount(pictures.length, "picture", "pictures")} chosen. Each is drawn anew, without where and with what it was taken.`}
        {unreadFiles.length > 0 && ` No picture that can be read: ${unreadFiles.join(", ")}.`}
      </p>
      <p className={styles.about} aria-live="polite">
        {picturesOnSheets.isReading
          ? "Reading the pictures on the sheets…"
          : `${sayCount(picturesOnSheets.shown.length, "picture", "pictures")} on the sheets; one belongs to the row it lies over. A file belongs to ${named} or to the row whose Photo names it.`}
      </p>
    </div>
  );
}
