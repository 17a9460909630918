import { Button } from "@fluentui/react-components";
import { usePane } from "../frame/usePane";
import { sayCount } from "../sayCount";
import { findingsSheet } from "./findingsSheet";
import type { SeverityGroup } from "./groupFindings";
import { useCheckStyles } from "./useCheckStyles";

/** Writes the findings that are shown on a sheet of their own, in one step that can be taken back. */
export function FindingsSheetAction({ groups }: { readonly groups: readonly SeverityGroup[] }) {
  const styles = useCheckStyles();
  const { state, actions } = usePane();
  const { read, asOf } = state;
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  if (read === null || count === 0) return null;
  const build = (): void => {
    const sheet = findingsSheet(groups, read, asOf);
    const label = `${sayCount(count, "finding", "findings")} on the new sheet ${sheet.name}`;
    void actions.build(label, { addSheets: [sheet], removeSheets: [], addColumns: [], removeColumns: [] });
  };
  return (
    <Button size="small" className={styles.action} onClick={build}>
      Write these findings as a sheet
    </Button>
  );
}
