import type { UnreadArea } from "../../sheet/readWorkbook";
import { GoToCell } from "../frame/GoToCell";
import { sayList } from "../sayList";
import { KindSelect } from "./KindSelect";
import { kindName } from "./kindName";
import { useColumnsStyles } from "./useColumnsStyles";
import type { KeptChoicesInHand } from "./useKeptChoices";
import { withAreaKind } from "./withAreaKind";

/** An area that was not read, why not, and the offer to say what it is. */
export function UnreadCard({ area, kept }: { readonly area: UnreadArea; readonly kept: KeptChoicesInHand }) {
  const styles = useColumnsStyles();
  const { sheetId, sheetName, tableName, row, column, headings, kinds } = area;
  const place = tableName ?? `the area at ${sheetName}`;
  const sheetKinds = Object.hasOwn(kept.kinds, sheetName) ? kept.kinds[sheetName]! : [];
  const named = headings.filter((heading) => heading.trim() !== "");
  return (
    <div className={styles.card} data-steady={`${sheetId} ${row} ${column}`}>
      <GoToCell at={{ sheetId, row, column }} sheetName={sheetName} />
      {tableName !== null && ` ${tableName}`}
      <p className={styles.note}>{`Headings: ${named.length === 0 ? "none" : named.join(", ")}.`}</p>
      <p className={styles.note}>
        {kinds.length > 1
          ? `It could be ${sayList(kinds.map((kind) => kindName(kind).toLowerCase())).replace(/ and (?=[^,]+$)/, " or ")}: say which.`
          : "Too few of its headings are understood. If it is none of these, leave it as it is."}
      </p>
      <KindSelect
        label={`Read ${place} as`}
        kind={null}
        isGiven={false}
        isDisabled={!kept.isRead || named.length === 0}
        onChoose={(kind) => void kept.keepKinds(sheetName, withAreaKind(sheetKinds, headings, kind))}
      />
    </div>
  );
}
