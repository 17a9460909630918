import type { FunctionDoc } from "./FunctionDoc";
import { TermsHelp } from "./TermsHelp";
import { useFunctionsStyles } from "./useFunctionsStyles";
import { withSemicolons } from "./withSemicolons";

/** Everything a function says of itself, for whoever wants to know exactly. */
export function FunctionHelp({ doc }: { readonly doc: FunctionDoc }) {
  const styles = useFunctionsStyles();
  const lines: readonly (readonly [string, string])[] = [
    ["It gives", doc.shape],
    ["Units", doc.units],
    ["Blank cells", doc.blanks],
    ["Bounds", doc.bounds],
    ["Errors", doc.errors],
    ["Where the rule comes from", doc.source],
  ];
  return (
    <details className={styles.details}>
      <summary className={styles.summary}>{`More about TACK.${doc.id}`}</summary>
      <dl>
        {lines.map(([term, meaning]) => (
          <div key={term}>
            <dt className={styles.term}>{term}</dt>
            <dd className={styles.meaning}>{meaning}</dd>
          </div>
        ))}
      </dl>
      {doc.params.some(({ name }) => name === "terms") && <TermsHelp />}
      <h3 className={styles.part}>Examples</h3>
      <ul className={styles.list}>
        {doc.examples.map(({ formula, gives, fails }) => (
          <li key={formula} className={styles.item}>
            <code className={styles.formula}>{formula}</code>
            {withSemicolons(formula) !== formula && (
              <>
                <span className={styles.note}>or, where a semicolon parts arguments,</span>
                <code className={styles.formula}>{withSemicolons(formula)}</code>
              </>
            )}
            <p className={styles.note}>{gives === null ? `fails: …${fails ?? ""}…` : `gives ${gives}`}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}
