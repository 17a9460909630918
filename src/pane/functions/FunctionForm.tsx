import { Button } from "@fluentui/react-components";
import { ArrowLeftRegular } from "@fluentui/react-icons";
import { useEffect, useMemo, useRef, useState } from "react";
import { cellName } from "../../sheet/cellName";
import type { CellPosition } from "../../sheet/cellPosition";
import { useKeptChoices } from "../columns/useKeptChoices";
import { usePane } from "../frame/usePane";
import type { ReadTables } from "../state/ReadTables";
import { argumentAccused } from "./argumentAccused";
import { ArgumentField } from "./ArgumentField";
import { argumentOptions } from "./argumentOptions";
import type { FunctionDoc } from "./FunctionDoc";
import { FunctionHelp } from "./FunctionHelp";
import { insertionObstacles } from "./insertionObstacles";
import { InsertPanel } from "./InsertPanel";
import { readCall } from "./readCall";
import { ResultPreview } from "./ResultPreview";
import { selectionReference } from "./selectionReference";
import { suggestedArguments } from "./suggestedArguments";
import { useFunctionsStyles } from "./useFunctionsStyles";
import { useResultPreview } from "./useResultPreview";
import { withSemicolons } from "./withSemicolons";

/** One function: what it says, its arguments, its result, and the way into a cell. */
export function FunctionForm(props: {
  readonly doc: FunctionDoc;
  readonly read: ReadTables;
  readonly onBack: () => void;
}) {
  const { doc, read, onBack } = props;
  const styles = useFunctionsStyles();
  const { state, actions } = usePane();
  const { columns } = useKeptChoices();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const [texts, setTexts] = useState(() => suggestedArguments(doc, read, columns));
  const [home, setHome] = useState<CellPosition | null>(null);
  const [target, setTarget] = useState<CellPosition | null>(null);

  const { workbook } = read;
  const call = useMemo(
    () => readCall(doc, texts, { workbook, today: state.today, home }),
    [doc, texts, workbook, state.today, home],
  );
  const options = useMemo(() => doc.params.map((param) => argumentOptions(param, read)), [doc, read]);
  const result = useResultPreview(doc.id, call.values);
  const accused = result?.kind === "error" ? argumentAccused(result.sentence, doc.params) : null;
  const semicolons = withSemicolons(call.formula);

  const nameOf = (sheetId: string): string => workbook.sheets.find((sheet) => sheet.sheetId === sheetId)?.name ?? "";
  const useSelection = async (name: string): Promise<void> => {
    const area = await actions.selection();
    if (area === null) return;
    setHome({ sheetId: area.sheetId, row: area.row, column: area.column });
    setTexts((before) => ({ ...before, [name]: `=${selectionReference(area, workbook)}` }));
  };
  const askForCell = async (): Promise<void> => {
    const at = await actions.activeCell();
    if (at === null) return;
    setHome(at);
    setTarget(at);
  };
  const insert = async (at: CellPosition): Promise<void> => {
    const sheet = workbook.sheets.find(({ sheetId }) => sheetId === at.sheetId);
    const [row, column] = [at.row - (sheet?.firstRow ?? 0), at.column - (sheet?.firstColumn ?? 0)];
    const held = sheet?.formulas[row]?.[column] ?? null;
    const edit = {
      at,
      expected: sheet?.values[row]?.[column] ?? null,
      ...(held !== null && { expectedFormula: held }),
      value: null,
      formula: call.formula,
    };
    const label = `TACK.${doc.id} inserted at ${nameOf(at.sheetId)}!${cellName(at.row, at.column)}`;
    if (await actions.write(label, [edit])) setTarget(null);
  };
  const size =
    result?.kind === "table" ? { rowCount: result.rows.length, columnCount: result.rows[0]?.length ?? 1 } : null;

  return (
    <>
      <Button size="small" className={styles.action} icon={<ArrowLeftRegular />} onClick={onBack}>
        All functions
      </Button>
      <h2 ref={heading} tabIndex={-1} className={styles.heading}>
        {doc.answers}
      </h2>
      <code className={styles.name}>{`TACK.${doc.id}`}</code>
      <p className={styles.note}>{doc.summary}</p>
      {doc.cautions.map((caution) => (
        <p key={caution} className={styles.caution}>
          <b>Mind:</b> {caution}
        </p>
      ))}
      {doc.params.map((param, place) => (
        <ArgumentField
          key={param.name}
          param={param}
          text={texts[param.name] ?? ""}
          sentence={
            call.sentences[param.name] ?? (accused === param.name && result?.kind === "error" ? result.sentence : null)
          }
          reading={call.readings[param.name] ?? null}
          options={options[place] ?? []}
          onType={(text) => setTexts((before) => ({ ...before, [param.name]: text }))}
          onUseSelection={() => void useSelection(param.name)}
        />
      ))}
      <h3 className={styles.part}>The formula</h3>
      <code className={styles.formula}>{call.formula}</code>
      {semicolons !== call.formula && (
        <>
          <p className={styles.note}>or, typed by hand where a semicolon parts arguments,</p>
          <code className={styles.formula}>{semicolons}</code>
        </>
      )}
      <h3 className={styles.part}>What it gives</h3>
      <div aria-live="polite">
        {call.unfinished !== null && <p className={styles.note}>{call.unfinished}</p>}
        {call.unseen !== null && <p className={styles.note}>{call.unseen}</p>}
        {call.values !== null && actions.callFunction === undefined && (
          <p className={styles.note}>The result shows once it is inserted.</p>
        )}
        {result !== null && <ResultPreview result={result} />}
      </div>
      {target === null ? (
        <div className={styles.actions}>
          <Button
            appearance="primary"
            className={styles.action}
            disabled={call.unfinished !== null}
            onClick={() => void askForCell()}
          >
            Insert at the selected cell…
          </Button>
        </div>
      ) : (
        <InsertPanel
          place={`${nameOf(target.sheetId)}!${cellName(target.row, target.column)}`}
          formula={call.formula}
          obstacles={insertionObstacles(workbook, target, call.formula, size)}
          onWrite={() => void insert(target)}
          onAskAgain={() => void askForCell()}
          onCancel={() => setTarget(null)}
        />
      )}
      <FunctionHelp doc={doc} />
    </>
  );
}
