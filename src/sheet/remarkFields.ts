/** Fields that nothing is computed from: of two columns of one of them the first is read. */
export const remarkFields: ReadonlySet<string> = new Set(
  "note photo contact address description size colour wanted tracking".split(" "),
);
