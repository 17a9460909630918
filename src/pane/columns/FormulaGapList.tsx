import { Button } from "@fluentui/react-components";
import type { CellEdit } from "../../sheet/cellEdit";
import { cellName } from "../../sheet/cellName";
import { GoToCell } from "../frame/GoToCell";
import { usePane } from "../frame/usePane";
import { sayCount } from "../sayCount";
import type { FormulaGap } from "./FormulaGap";
import { useColumnsStyles } from "./useColumnsStyles";

/** As many are shown at once; all of them are written. */
const SHOWN = 20;

/** Formulas that read a table otherwise than the pane was told, before and after, and the offer to mend them. */
export function FormulaGapList({ gaps }: { readonly gaps: readonly FormulaGap[] }) {
  const styles = useColumnsStyles();
  const { actions } = usePane();
  if (gaps.length === 0) return null;
  const editsOf = (of: readonly FormulaGap[]): CellEdit[] =>
    of.flatMap(({ at, before, after }) =>
      after === null ? [] : { at, expected: null, expectedFormula: before, value: null, formula: after },
    );
  const edits = editsOf(gaps);
  const formulas = sayCount(edits.length, "formula", "formulas");
  return (
    <section>
      <h2 className={styles.heading}>{`${sayCount(gaps.length, "formula does", "formulas do")} not know this yet`}</h2>
      <p className={styles.note}>
        A formula sees the cells and not what was chosen here, so it needs the same in its columns argument.
      </p>
      {edits.length > 1 && (
        <Button
          size="small"
          appearance="primary"
          className={styles.action}
          onClick={() => void actions.write(`Columns inserted in ${formulas}`, edits)}
        >
          {`Insert it in ${formulas}, as shown`}
        </Button>
      )}
      <ul className={styles.list}>
        {gaps.slice(0, SHOWN).map((gap) => {
          const { at, sheetName, before, after, obstacle } = gap;
          const place = `${sheetName}!${cellName(at.row, at.column)}`;
          return (
            <li key={place} className={styles.line} data-steady={place}>
              <GoToCell at={at} sheetName={sheetName} />
              <p className={styles.note}>Now</p>
              <code className={styles.formula}>{before}</code>
              {after === null ? (
                <p className={styles.note}>{`It is left to you: ${obstacle}.`}</p>
              ) : (
                <>
                  <p className={styles.note}>Becomes</p>
                  <code className={styles.formula}>{after}</code>
                  <div className={styles.actions}>
                    <Button
                      size="small"
                      className={styles.action}
                      aria-label={`Insert it at ${place}`}
                      onClick={() => void actions.write(`Columns inserted at ${place}`, editsOf([gap]))}
                    >
                      Insert it
                    </Button>
                  </div>
                </>
              )}
            </li>
          );
        })}
      </ul>
      {gaps.length > SHOWN && (
        <p className={styles.note}>{`And ${sayCount(gaps.length - SHOWN, "more", "more")} of the same sort.`}</p>
      )}
    </section>
  );
}
