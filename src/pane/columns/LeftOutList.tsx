import { Button } from "@fluentui/react-components";
import type { UnreadArea } from "../../sheet/readWorkbook";
import { GoToCell } from "../frame/GoToCell";
import { useColumnsStyles } from "./useColumnsStyles";
import type { KeptChoicesInHand } from "./useKeptChoices";
import { withAreaKind } from "./withAreaKind";

/** The areas that somebody set aside, with the way back. */
export function LeftOutList(props: { readonly areas: readonly UnreadArea[]; readonly kept: KeptChoicesInHand }) {
  const styles = useColumnsStyles();
  const { areas, kept } = props;
  if (areas.length === 0) return null;
  return (
    <section>
      <h2 className={styles.heading}>Left out by hand</h2>
      <ul className={styles.list}>
        {areas.map(({ sheetId, sheetName, row, column, headings }) => {
          const sheetKinds = Object.hasOwn(kept.kinds, sheetName) ? kept.kinds[sheetName]! : [];
          return (
            <li key={`${sheetId} ${row} ${column}`} className={styles.line}>
              <GoToCell at={{ sheetId, row, column }} sheetName={sheetName} />
              {`: ${headings.filter((heading) => heading.trim() !== "").join(", ")} `}
              <Button
                size="small"
                className={styles.action}
                disabled={!kept.isRead}
                onClick={() => void kept.keepKinds(sheetName, withAreaKind(sheetKinds, headings, undefined))}
              >
                Read it again
              </Button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
