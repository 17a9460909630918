import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useEffect, useRef, type ReactNode } from "react";
import { paneStyle } from "./paneStyle";

const useStyles = makeStyles({
  panel: {
    margin: `${tokens.spacingVerticalS} 0`,
    padding: tokens.spacingHorizontalS,
    border: `1px solid ${tokens.colorBrandStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
    overflowWrap: "anywhere",
  },
  heading: {
    margin: `0 0 ${tokens.spacingVerticalXS}`,
    fontSize: "inherit",
    fontWeight: tokens.fontWeightSemibold,
  },
  actions: paneStyle.actions,
  action: paneStyle.action,
});

interface StepPanelProps {
  /** Of its heading, one below the heading it stands under. */
  readonly level: 3 | 4;
  readonly title: string;
  /** What the step will do. */
  readonly children: ReactNode;
  /** The button that does it; null where it cannot be done. */
  readonly doIt: string | null;
  readonly onDo: () => void;
  readonly onCancel: () => void;
  /** Another button, between doing it and leaving it. */
  readonly other?: { readonly label: string; readonly onClick: () => void };
}

/** Says what a step will do before it is done. It takes the focus, and Escape leaves it. */
export function StepPanel({ level, title, children, doIt, onDo, onCancel, other }: StepPanelProps) {
  const styles = useStyles();
  const Heading = `h${level}` as const;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <div
      className={styles.panel}
      onKeyDown={(event) => {
        if (event.key === "Escape") onCancel();
      }}
    >
      <Heading ref={heading} tabIndex={-1} className={styles.heading}>
        {title}
      </Heading>
      {children}
      <div className={styles.actions}>
        {doIt !== null && (
          <Button size="small" appearance="primary" className={styles.action} onClick={onDo}>
            {doIt}
          </Button>
        )}
        {other !== undefined && (
          <Button size="small" className={styles.action} onClick={other.onClick}>
            {other.label}
          </Button>
        )}
        <Button size="small" className={styles.action} onClick={onCancel}>
          Cancel
        </Button>
      </div>
    </div>
  );
}
