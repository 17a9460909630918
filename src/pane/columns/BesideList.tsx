import { GoToCell } from "../frame/GoToCell";
import type { readBeside } from "./readBeside";
import { useColumnsStyles } from "./useColumnsStyles";

/** What is read beside the tables, each with the way to it. */
export function BesideList({ found }: Pick<ReturnType<typeof readBeside>, "found">) {
  const styles = useColumnsStyles();
  if (found.length === 0) return null;
  return (
    <section>
      <h2 className={styles.heading}>Read beside the tables</h2>
      <ul className={styles.list}>
        {found.map(({ place: { at, sheetName }, what }) => (
          <li key={`${at.sheetId} ${at.row} ${at.column}`} className={styles.line}>
            {`${what}, at `}
            <GoToCell at={at} sheetName={sheetName} />
          </li>
        ))}
      </ul>
    </section>
  );
}
