import { Button, CounterBadge } from "@fluentui/react-components";
import { ChevronDownRegular, ChevronRightRegular } from "@fluentui/react-icons";
import { memo, useId } from "react";
import type { Dispatch, ReactNode } from "react";
import type { CheckAction } from "./CheckAction";
import { useCheckStyles } from "./useCheckStyles";

interface RuleGroupSectionProps {
  readonly groupId: string;
  readonly about: string;
  readonly why: string;
  readonly count: number;
  readonly isOpen: boolean;
  readonly dispatch: Dispatch<CheckAction>;
  readonly children: ReactNode;
}

/** The findings of one rule under their heading, opened and closed by it. */
export function RuleGroupSection({ groupId, about, why, count, isOpen, dispatch, children }: RuleGroupSectionProps) {
  const styles = useCheckStyles();
  const bodyId = useId();
  return (
    <section className={styles.group}>
      <GroupOpener groupId={groupId} about={about} count={count} isOpen={isOpen} bodyId={bodyId} dispatch={dispatch} />
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

/** Drawn again only when what it says changes: there is one for every kind of finding. */
const GroupOpener = memo(function GroupOpener({
  groupId,
  about,
  count,
  isOpen,
  bodyId,
  dispatch,
}: Omit<RuleGroupSectionProps, "why" | "children"> & { readonly bodyId: string }) {
  const styles = useCheckStyles();
  return (
    <h3 className={styles.groupHeading}>
      <Button
        appearance="transparent"
        className={styles.opener}
        icon={isOpen ? <ChevronDownRegular /> : <ChevronRightRegular />}
        aria-expanded={isOpen}
        aria-controls={bodyId}
        onClick={() => dispatch({ type: "group opened", groupId, isOpen: !isOpen })}
      >
        <span className={styles.openerText}>{about}</span>
        <CounterBadge count={count} overflowCount={99999} appearance="ghost" color="informative" />
      </Button>
    </h3>
  );
});
