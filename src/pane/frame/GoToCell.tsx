import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { cellName } from "../../sheet/cellName";
import type { CellPosition } from "../../sheet/cellPosition";
import { useActions } from "./useActions";

const useStyles = makeStyles({
  button: {
    minWidth: "24px",
    minHeight: "24px",
    maxWidth: "100%",
    paddingLeft: tokens.spacingHorizontalXS,
    paddingRight: tokens.spacingHorizontalXS,
    marginLeft: `calc(-1 * ${tokens.spacingHorizontalXS})`,
    marginRight: `calc(-1 * ${tokens.spacingHorizontalXS})`,
    justifyContent: "flex-start",
    textAlign: "left",
    overflowWrap: "anywhere",
    color: tokens.colorBrandForeground1,
    textDecorationLine: "underline",
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
});

/** A button that says where a cell is and goes there. `children` is the text shown in place of sheet and cell. */
export function GoToCell({
  at,
  sheetName,
  children,
}: {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly children?: string;
}) {
  const styles = useStyles();
  const actions = useActions();
  const place = `${sheetName}!${cellName(at.row, at.column)}`;
  const label = children === undefined ? `Go to ${place}` : `${children}, go to ${place}`;
  return (
    <Button
      appearance="transparent"
      size="small"
      className={styles.button}
      title={`Go to ${place}`}
      aria-label={label}
      onClick={() => void actions.goTo(at)}
    >
      {children ?? place}
    </Button>
  );
}
