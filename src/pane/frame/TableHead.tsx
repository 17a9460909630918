import { mergeClasses } from "@fluentui/react-components";

/** The heading row of a small table. */
export function TableHead(props: {
  readonly headings: readonly string[];
  readonly className: string | undefined;
  /** Added where a column is given another look, by its place. */
  readonly alsoAt?: Readonly<Partial<Record<number, string>>>;
}) {
  return (
    <thead>
      <tr>
        {props.headings.map((text, column) => (
          <th key={text} scope="col" className={mergeClasses(props.className, props.alsoAt?.[column])}>
            {text}
          </th>
        ))}
      </tr>
    </thead>
  );
}
