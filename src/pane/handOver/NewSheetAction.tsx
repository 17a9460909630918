import { Button } from "@fluentui/react-components";
import { withAreaKind } from "../columns/withAreaKind";
import { useKeptChoices } from "../columns/useKeptChoices";
import { usePane } from "../frame/usePane";
import type { DocumentTable } from "./paper/DocumentTable";
import { newSheetOf } from "./newSheetOf";
import { useHandOverStyles } from "./useHandOverStyles";

/** Puts the rows of a document on a sheet of their own, which is set aside so that nothing on it is counted again. */
export function NewSheetAction({ title, table }: { readonly title: string; readonly table: DocumentTable }) {
  const styles = useHandOverStyles();
  const { state, actions } = usePane();
  const kept = useKeptChoices();
  const build = async (): Promise<void> => {
    if (state.read === null) return;
    const sheet = newSheetOf(title, table, state.read.workbook);
    // First, so that the new rows are at no moment taken for more pieces.
    const isSetAside = await kept.keepKinds(sheet.name, withAreaKind([], sheet.headings, null));
    if (!isSetAside) return;
    await actions.build(`${title} on a new sheet`, {
      addSheets: [sheet],
      removeSheets: [],
      addColumns: [],
      removeColumns: [],
    });
  };
  return (
    <Button className={styles.action} disabledFocusable={!kept.isRead} onClick={() => void build()}>
      Put on a new sheet
    </Button>
  );
}
