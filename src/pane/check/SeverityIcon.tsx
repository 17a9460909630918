import { makeStyles, tokens } from "@fluentui/react-components";
import { ErrorCircleFilled, InfoFilled, WarningFilled } from "@fluentui/react-icons";
import type { Severity } from "../../checks/finding";

const useStyles = makeStyles({
  error: { color: tokens.colorStatusDangerForeground3 },
  warning: { color: tokens.colorStatusWarningForeground1 },
  note: { color: tokens.colorNeutralForeground2 },
});

/** A severity by shape as well as colour; the word stands beside it, so screen readers skip it. */
export function SeverityIcon({ severity }: { readonly severity: Severity }) {
  const styles = useStyles();
  const Icon = { error: ErrorCircleFilled, warning: WarningFilled, note: InfoFilled }[severity];
  return <Icon aria-hidden className={styles[severity]} />;
}
