import { mergeClasses } from "@fluentui/react-components";
import type { ReactNode } from "react";
import { useTodayStyles } from "./useTodayStyles";

interface TodaySectionProps {
  /** Names the section within the page. */
  readonly id: string;
  readonly heading: string;
  readonly isAlarm?: boolean;
  readonly children?: ReactNode;
}

/** One section of Today: its heading says by itself whether there is anything to do. */
export function TodaySection({ id, heading, isAlarm = false, children }: TodaySectionProps) {
  const styles = useTodayStyles();
  return (
    <section className={styles.section} aria-labelledby={`today-${id}`}>
      <h2 id={`today-${id}`} className={mergeClasses(styles.heading, isAlarm && styles.alarm)}>
        {heading}
      </h2>
      {children}
    </section>
  );
}
