import { mergeClasses } from "@fluentui/react-components";
import { useMemo } from "react";
import { GoToCell } from "../frame/GoToCell";
import { sayCount } from "../sayCount";
import { sayMoney } from "../sayMoney";
import type { CoverFigure } from "./Cover";
import { LineList } from "./LineList";
import { piecesOverCover } from "./piecesOverCover";
import type { PieceTable } from "./PieceTable";
import { useTodayStyles } from "./useTodayStyles";

interface PieceCoverProps {
  readonly pieces: readonly PieceTable[];
  readonly currency: string;
  readonly limit: CoverFigure;
  readonly asOf: number;
}

/** The pieces that are worth more than the cover of one, or that there are none. */
export function PieceCover({ pieces, currency, limit, asOf }: PieceCoverProps) {
  const styles = useTodayStyles();
  const over = useMemo(
    () => piecesOverCover(pieces, currency, limit.amount, asOf),
    [pieces, currency, limit.amount, asOf],
  );
  const { place } = limit;
  return (
    <>
      {over.length > 0 && (
        <h3 className={mergeClasses(styles.part, styles.alarm)}>
          {`Over the cover of one piece: ${sayCount(over.length, "row", "rows")}`}
        </h3>
      )}
      <p className={styles.note}>
        {over.length === 0 ? "No piece held is" : "Worth"}
        {` ${over.length === 0 ? "worth more" : "more"} than ${sayMoney(limit.amount, currency)}, the cover of one piece`}
        {place !== null && (
          <>
            {" at "}
            <GoToCell at={place.at} sheetName={place.sheetName} />
          </>
        )}
        .
      </p>
      <LineList
        of={over}
        toLine={({ value, overBy, ...line }) => ({
          ...line,
          fact: sayMoney(value, currency),
          more: `over by ${sayMoney(overBy, currency)}`,
        })}
      />
    </>
  );
}
