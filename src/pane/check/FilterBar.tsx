import { Select, ToggleButton } from "@fluentui/react-components";
import type { Dispatch } from "react";
import type { CheckAction } from "./CheckAction";
import type { FindingFilter } from "./FindingFilter";
import type { OpenFinding } from "./OpenFinding";
import { severities } from "./severities";
import { SeverityIcon } from "./SeverityIcon";
import { useCheckStyles } from "./useCheckStyles";

interface FilterBarProps {
  readonly open: readonly OpenFinding[];
  readonly filter: FindingFilter;
  readonly dispatch: Dispatch<CheckAction>;
  readonly sayRule: (ruleId: string) => string;
}

/** Which severities and which kind are shown, each with its count. */
export function FilterBar({ open, filter, dispatch, sayRule }: FilterBarProps) {
  const styles = useCheckStyles();
  const countOf = new Map<string, number>();
  for (const { finding } of open) {
    countOf.set(finding.severity, (countOf.get(finding.severity) ?? 0) + 1);
    countOf.set(finding.ruleId, (countOf.get(finding.ruleId) ?? 0) + 1);
  }
  const ruleIds = [...new Set(open.map(({ finding }) => finding.ruleId))];
  // A kind that was chosen stays in the list when its last finding has gone.
  if (filter.ruleId !== null && !ruleIds.includes(filter.ruleId)) ruleIds.push(filter.ruleId);
  return (
    <div className={styles.filters} role="group" aria-label="What is shown">
      {severities.map(({ id, one, many }) => {
        const count = countOf.get(id) ?? 0;
        return (
          <ToggleButton
            key={id}
            size="small"
            className={styles.filter}
            icon={<SeverityIcon severity={id} />}
            checked={filter.severities.includes(id)}
            onClick={() => dispatch({ type: "severity toggled", severity: id })}
          >
            {`${count.toLocaleString("en-GB")} ${count === 1 ? one : many}`}
          </ToggleButton>
        );
      })}
      <Select
        className={styles.kinds}
        size="small"
        aria-label="Kind of finding"
        value={filter.ruleId ?? ""}
        onChange={(_, { value }) => dispatch({ type: "rule chosen", ruleId: value === "" ? null : value })}
      >
        <option value="">Every kind of finding</option>
        {ruleIds.map((ruleId) => (
          <option key={ruleId} value={ruleId}>
            {`${sayRule(ruleId)} (${countOf.get(ruleId) ?? 0})`}
          </option>
        ))}
      </Select>
    </div>
  );
}
