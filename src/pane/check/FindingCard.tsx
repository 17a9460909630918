import { Button, mergeClasses } from "@fluentui/react-components";
import { memo } from "react";
import type { Dispatch } from "react";
import { cellName } from "../../sheet/cellName";
import type { Repair } from "../../checks/finding";
import { GoToCell } from "../frame/GoToCell";
import type { CheckAction } from "./CheckAction";
import { IgnoreForm } from "./IgnoreForm";
import type { OpenFinding } from "./OpenFinding";
import { useCheckStyles } from "./useCheckStyles";

interface FindingCardProps {
  readonly open: OpenFinding;
  /** What the cell holds, as said to the user. */
  readonly held: string;
  /** The reason typed so far, while this finding is about to be ignored. */
  readonly reason: string | null;
  readonly dispatch: Dispatch<CheckAction>;
  readonly onRepair: (repair: Repair, place: string) => void;
  readonly onIgnore: (open: OpenFinding, held: string, reason: string) => void;
}

/** One finding: where, what it holds, what is wrong, and what can be done. */
export const FindingCard = memo(Card, isSameCard);

function Card({ open, held, reason, dispatch, onRepair, onIgnore }: FindingCardProps) {
  const styles = useCheckStyles();
  const { finding, id } = open;
  const place = `${finding.sheetName}!${cellName(finding.at.row, finding.at.column)}`;
  return (
    <li className={styles.card} data-steady={id}>
      <div className={styles.cardHead}>
        <GoToCell at={finding.at} sheetName={finding.sheetName} />
        {finding.heading !== "" && <span className={styles.place}>{finding.heading}</span>}
        <span className={styles.held}>{held}</span>
      </div>
      <p className={styles.message}>{finding.message}</p>
      {finding.suggestions.length > 0 && (
        <fieldset className={styles.choices}>
          <legend className={styles.legend}>
            {finding.suggestions.length === 1 ? "If this is what is meant:" : "Choose what is meant:"}
          </legend>
          <div className={styles.actions}>
            {finding.suggestions.map((repair) => (
              <RepairButton key={repair.label} repair={repair} place={place} isFix={false} onRepair={onRepair} />
            ))}
          </div>
        </fieldset>
      )}
      <div className={styles.actions}>
        {finding.fix !== undefined && <RepairButton repair={finding.fix} place={place} isFix onRepair={onRepair} />}
        <Button
          className={mergeClasses(styles.action, finding.fix === undefined && styles.outdented)}
          size="small"
          appearance="subtle"
          aria-label={`Ignore this finding at ${place}`}
          aria-expanded={reason !== null}
          onClick={() => dispatch(reason === null ? { type: "ignore begun", findingId: id } : { type: "ignore ended" })}
        >
          Ignore…
        </Button>
      </div>
      {reason !== null && (
        <IgnoreForm place={place} reason={reason} dispatch={dispatch} onIgnore={() => onIgnore(open, held, reason)} />
      )}
    </li>
  );
}

/** A check names every finding anew, though most of them are the very ones of the check before. */
function isSameCard(before: FindingCardProps, after: FindingCardProps): boolean {
  return (
    before.open.id === after.open.id &&
    before.open.finding === after.open.finding &&
    before.held === after.held &&
    before.reason === after.reason &&
    before.dispatch === after.dispatch &&
    before.onRepair === after.onRepair &&
    before.onIgnore === after.onIgnore
  );
}

function RepairButton(props: {
  readonly repair: Repair;
  readonly place: string;
  readonly isFix: boolean;
  readonly onRepair: (repair: Repair, place: string) => void;
}) {
  const styles = useCheckStyles();
  const text = props.isFix ? `Fix: ${props.repair.label}` : props.repair.label;
  return (
    <Button
      className={styles.action}
      size="small"
      appearance={props.isFix ? "primary" : "outline"}
      aria-label={`${text}, at ${props.place}`}
      onClick={() => props.onRepair(props.repair, props.place)}
    >
      {text}
    </Button>
  );
}
