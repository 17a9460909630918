import { Button, Checkbox } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { sayProblem } from "../../domain/wording";
import { refusePlan } from "../../sheet/refusePlan";
import { usePane } from "../frame/usePane";
import { HolidaysHelper } from "../holidays/HolidaysHelper";
import { sayCount } from "../sayCount";
import { ExampleSection } from "./ExampleSection";
import { exampleRows } from "./exampleRows";
import { foundTables } from "./foundTables";
import { sayPlan } from "./sayPlan";
import { StartCard } from "./StartCard";
import { startPlan, type StartChoice } from "./startPlan";
import { startTables } from "./startTables";
import { StartStep } from "./StartStep";
import { useStartStyles } from "./useStartStyles";

/** A fresh workbook's tables, or only what is missing beside the rows that are there. */
export function StartView() {
  const styles = useStartStyles();
  const { state, actions } = usePane();
  const { read, today } = state;
  const found = useMemo(() => (read === null ? [] : foundTables(startTables, read)), [read]);
  const [choice, setChoice] = useState<StartChoice | null>(null);
  const [isAsking, setAsking] = useState(false);
  if (read === null) return null;

  const isFresh = found.every(({ place }) => place === null);
  const chosen = choice ?? firstChoice(isFresh);
  const plan = startPlan(found, read.workbook, chosen, today);
  const parts = plan.addSheets.length + plan.addColumns.length;
  const refusal = parts === 0 ? null : refusePlan(read.workbook, plan);
  const change = (more: Partial<StartChoice>): void => {
    setAsking(false);
    setChoice({ ...chosen, ...more });
  };
  const label = [
    plan.addSheets.length > 0 && sayCount(plan.addSheets.length, "sheet", "sheets"),
    plan.addColumns.length > 0 &&
      sayCount(
        plan.addColumns.reduce((sum, { headings }) => sum + headings.length, 0),
        "column",
        "columns",
      ),
  ]
    .filter(Boolean)
    .join(" and ");
  const build = async (): Promise<void> => {
    if (!(await actions.build(`${label} added`, plan))) return;
    setAsking(false);
    setChoice({ tables: [], columns: {}, withExamples: false });
  };

  return (
    <>
      <p className={styles.lead}>
        {isFresh
          ? "Nothing of a loan sheet is here yet. Choose the tables to begin with; each comes on a sheet of its own."
          : "What is there stays as it is. Choose what to add beside it."}
      </p>
      <ExampleSection rows={exampleRows(read)} />
      <h2 className={styles.heading}>Tables</h2>
      {found.map((one) => {
        const { id } = one.start;
        const headings = chosen.columns[id] ?? [];
        return (
          <StartCard
            key={id}
            found={one}
            isTableChosen={chosen.tables.includes(id)}
            headingsChosen={headings}
            onTable={(isChosen) =>
              change({ tables: isChosen ? [...chosen.tables, id] : chosen.tables.filter((other) => other !== id) })
            }
            onHeading={(heading, isChosen) =>
              change({
                columns: {
                  ...chosen.columns,
                  [id]: isChosen ? [...headings, heading] : headings.filter((other) => other !== heading),
                },
              })
            }
          />
        );
      })}
      {plan.addSheets.length > 0 && (
        <Checkbox
          label="With a few example rows, marked in Note"
          checked={chosen.withExamples}
          onChange={(_, { checked }) => change({ withExamples: checked === true })}
        />
      )}
      {isAsking && parts > 0 ? (
        <StartStep
          title={`${label} would be added, in one step`}
          sentences={sayPlan(plan, read.workbook)}
          obstacle={refusal === null || refusal.ok ? null : sayProblem(refusal.problem)}
          doIt={`Add ${label}`}
          onDo={() => void build()}
          onCancel={() => setAsking(false)}
        />
      ) : (
        <div className={styles.actions}>
          <Button appearance="primary" className={styles.action} disabled={parts === 0} onClick={() => setAsking(true)}>
            {parts === 0 ? "Nothing is chosen" : `Add ${label}…`}
          </Button>
        </div>
      )}
      <h2 className={styles.heading}>Public holidays</h2>
      <p className={styles.note}>They go among the closed days, around which due dates and courier days are counted.</p>
      <HolidaysHelper />
    </>
  );
}

/** A fresh workbook gets everything, with examples; in one that has rows nothing is chosen unasked. */
function firstChoice(isFresh: boolean): StartChoice {
  return { tables: isFresh ? startTables.map(({ id }) => id) : [], columns: {}, withExamples: isFresh };
}
