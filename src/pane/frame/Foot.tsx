import { useFrameStyles } from "./useFrameStyles";

/** The usual caution, under every view. */
export function Foot() {
  const styles = useFrameStyles();
  return (
    <footer className={styles.foot}>
      These figures come from your sheet as it is typed. They are no insurance, legal or labour advice: the policy, the
      lender&rsquo;s slip, local rules and your crew&rsquo;s agreement come first.
    </footer>
  );
}
