import { Button, CounterBadge } from "@fluentui/react-components";
import { ChevronDownRegular, ChevronRightRegular } from "@fluentui/react-icons";
import { useId } from "react";
import type { ReactNode } from "react";
import { useCheckStyles } from "./useCheckStyles";

interface RuleGroupSectionProps {
  readonly about: string;
  readonly why: string;
  readonly count: number;
  readonly isOpen: boolean;
  readonly onOpen: (isOpen: boolean) => void;
  readonly children: ReactNode;
}

/** The findings of one rule under their heading, opened and closed by it. */
export function RuleGroupSection({ about, why, count, isOpen, onOpen, children }: RuleGroupSectionProps) {
  const styles = useCheckStyles();
  const bodyId = useId();
  return (
    <section className={styles.group}>
      <h3 className={styles.groupHeading}>
        <Button
          appearance="transparent"
          className={styles.opener}
          icon={isOpen ? <ChevronDownRegular /> : <ChevronRightRegular />}
          aria-expanded={isOpen}
          aria-controls={bodyId}
          onClick={() => onOpen(!isOpen)}
        >
          <span className={styles.openerText}>{about}</span>
          <CounterBadge count={count} overflowCount={99999} appearance="ghost" color="informative" />
        </Button>
      </h3>
      <div id={bodyId} className={styles.groupBody} hidden={!isOpen}>
        {isOpen && (
          <>
            <p className={styles.why}>{why}</p>
            {children}
          </>
        )}
      </div>
    </section>
  );
}
