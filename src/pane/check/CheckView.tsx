import { Button } from "@fluentui/react-components";
import { memo, useCallback, useMemo, useReducer, useRef } from "react";
import type { Dispatch } from "react";
import { allRules } from "../../checks/allRules";
import type { Repair } from "../../checks/finding";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import type { WorkbookTables } from "../../sheet/readWorkbook";
import { cellName } from "../../sheet/cellName";
import { NoTables } from "../frame/NoTables";
import { useActions } from "../frame/useActions";
import { usePane } from "../frame/usePane";
import { useSteadyList } from "../frame/useSteadyList";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { sayTableRows } from "../sayTableRows";
import type { ReadTables } from "../state/ReadTables";
import type { CheckAction } from "./CheckAction";
import type { CheckState } from "./CheckState";
import { checkReducer, initialCheckState } from "./checkReducer";
import { FilterBar } from "./FilterBar";
import { FindingCard } from "./FindingCard";
import { FindingsSheetAction } from "./FindingsSheetAction";
import { FixPreview } from "./FixPreview";
import { fixesTogether } from "./fixesTogether";
import { GroupButton } from "./GroupButton";
import { groupFindings } from "./groupFindings";
import type { RuleGroup } from "./groupFindings";
import type { IgnoredEntry } from "./IgnoredEntry";
import { IgnoredList } from "./IgnoredList";
import { ignoredKey } from "./ignoredKey";
import { ignoredText } from "./ignoredText";
import { isDateCell } from "./isDateCell";
import type { OpenFinding } from "./OpenFinding";
import { openGroups } from "./openGroups";
import { RuleGroupSection } from "./RuleGroupSection";
import { sayCell } from "./sayCell";
import { sayStanding } from "./sayStanding";
import { severities } from "./severities";
import { SeverityIcon } from "./SeverityIcon";
import { TablesRead } from "./TablesRead";
import { useCheckStyles } from "./useCheckStyles";
import { useSplitFindings } from "./useSplitFindings";

/** A group shows this many findings until more are asked for, so that 10,000 of them do not stop the pane. */
const FIRST_PAGE = 8;
const NEXT_PAGE = 50;

const ruleOrder = allRules.map(({ id }) => id);
const aboutOf = new Map(allRules.map(({ id, about }) => [id, about.replace(/\.$/, "")]));
const sayRule = (ruleId: string): string => aboutOf.get(ruleId) ?? ruleId;

/**
 * What was not read and may have been meant to be. A table of the host whose headings say nothing to the tool (a list of
 * closed days, say) is somebody's own and no slip, as long as others were read.
 */
const unreadOf = ({ unread }: WorkbookTables) =>
  unread.filter(({ tableName, kinds }) => tableName === null || kinds.length > 1);

/** What the sheet check found, live, with what can be done about each. */
export function CheckView() {
  const { asOf, today, read, checkedRead } = usePane().state;
  const [check, dispatch] = useReducer(checkReducer, initialCheckState);
  const split = useSplitFindings();
  if (read === null) return null;
  if (read.tables.length === 0) return <NoTables />;
  if (split === null || checkedRead === null) return <p>Checking…</p>;
  return <Found read={checkedRead} split={split} check={check} dispatch={dispatch} asOf={asOf} today={today} />;
}

interface FoundProps {
  /** What the findings were found in. */
  readonly read: ReadTables;
  readonly split: NonNullable<ReturnType<typeof useSplitFindings>>;
  readonly check: CheckState;
  readonly dispatch: Dispatch<CheckAction>;
  readonly asOf: number;
  readonly today: number;
}

/** Drawn again when a check has ended, and not each time a reading begins, is there and ends. */
const Found = memo(function Found({ read, split, check, dispatch, asOf, today }: FoundProps) {
  const styles = useCheckStyles();
  const actions = useActions();
  const root = useRef<HTMLDivElement>(null);
  useSteadyList(root);

  const entries = useRef<readonly IgnoredEntry[]>([]);
  entries.current = split.entries;

  const repair = useCallback(
    (of: Repair, place: string) => void actions.write(`${of.label}, at ${place}`, of.edits),
    [actions],
  );
  const ignore = useCallback(
    async (open: OpenFinding, held: string, reason: string) => {
      const { finding, key } = open;
      const place = `${finding.sheetName}!${cellName(finding.at.row, finding.at.column)}`;
      const entry: IgnoredEntry = {
        key,
        place,
        heading: finding.heading,
        held,
        message: finding.message,
        reason: reason.trim(),
        ignoredOn: isoFromSerial(today),
      };
      const isKept = await actions.keep(ignoredKey, ignoredText([...entries.current, entry]));
      if (isKept) dispatch({ type: "ignore ended" });
    },
    [actions, dispatch, today],
  );
  const groups = useMemo(() => groupFindings(split.open, check.filter, ruleOrder), [split, check.filter]);

  const { tables } = read;
  const opened = openGroups(groups, check.isOpen);
  const sheetNames = new Map(read.workbook.sheets.map((sheet) => [sheet.sheetId, sheet.name]));
  const day = `as of ${sayDay(asOf)}${asOf === today ? ", today" : ""}`;

  const group = (rule: RuleGroup) => {
    const shown = check.shown[rule.id] ?? FIRST_PAGE;
    const left = rule.findings.length - shown;
    const fixes = check.previewOf === rule.id ? fixesTogether(rule.findings) : null;
    return (
      <div key={rule.id} data-steady={rule.id}>
        <RuleGroupSection
          groupId={rule.id}
          about={sayRule(rule.ruleId)}
          why={rule.why}
          count={rule.findings.length}
          isOpen={opened.has(rule.id)}
          dispatch={dispatch}
        >
          {rule.fixableCount > 1 && fixes === null && (
            <GroupButton type="preview opened" groupId={rule.id} dispatch={dispatch}>
              {`Fix all ${rule.fixableCount.toLocaleString("en-GB")}…`}
            </GroupButton>
          )}
          {fixes !== null && fixes.edits.length > 0 && (
            <FixPreview
              fixes={fixes}
              tables={tables}
              sheetNames={sheetNames}
              onCancel={() => dispatch({ type: "preview closed" })}
              onWrite={async () => {
                const label = `${sayCount(fixes.edits.length, "cell", "cells")} written: ${sayRule(rule.ruleId)}`;
                if (await actions.write(label, fixes.edits)) dispatch({ type: "preview closed" });
              }}
            />
          )}
          <ul className={styles.list}>
            {rule.findings.slice(0, shown).map((open) => (
              <FindingCard
                key={open.id}
                open={open}
                held={sayCell(open.finding.raw, isDateCell(open.finding.at, tables))}
                reason={check.ignoring?.findingId === open.id ? check.ignoring.reason : null}
                dispatch={dispatch}
                onRepair={repair}
                onIgnore={ignore}
              />
            ))}
          </ul>
          {left > 0 && (
            <GroupButton type="more shown" groupId={rule.id} shown={shown + NEXT_PAGE} dispatch={dispatch}>
              {`Show ${Math.min(left, NEXT_PAGE)} more of ${rule.findings.length.toLocaleString("en-GB")}`}
            </GroupButton>
          )}
        </RuleGroupSection>
      </div>
    );
  };

  const isFiltered = groups.length === 0 && split.open.length > 0;
  return (
    <div ref={root}>
      <p className={styles.summary} tabIndex={-1}>
        <b>{sayStanding(split.open)}</b> in {sayTableRows(tables)}, {day}.
      </p>
      {split.open.length > 0 && (
        <FilterBar open={split.open} filter={check.filter} dispatch={dispatch} sayRule={sayRule} />
      )}
      {isFiltered && (
        <p>
          Nothing of the kind chosen.{" "}
          <Button size="small" className={styles.action} onClick={() => dispatch({ type: "filter cleared" })}>
            Show everything
          </Button>
        </p>
      )}
      {groups.map(({ severity, count, rules }) => {
        const words = severities.find(({ id }) => id === severity);
        return (
          <section key={severity}>
            <h2 className={styles.severity}>
              <SeverityIcon severity={severity} />
              {sayCount(count, words?.one ?? "", words?.many ?? "")}
            </h2>
            {rules.map(group)}
          </section>
        );
      })}
      <FindingsSheetAction groups={groups} />
      <IgnoredList
        ignored={split.ignored}
        unreadable={split.unreadable}
        onCheckAgain={(entry) =>
          void actions.keep(ignoredKey, ignoredText(entries.current.filter(({ key }) => key !== entry.key)))
        }
      />
      <TablesRead tables={tables} unread={unreadOf(read)} />
    </div>
  );
});
