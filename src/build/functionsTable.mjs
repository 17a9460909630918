import { markdownCell } from "./markdownCell.mjs";

/** The functions by family, each with its arguments, what it answers and gives, and the cautions under the table. */
export function functionsTable(docs) {
  const families = [...new Set(docs.map((doc) => doc.family))].sort();
  return families
    .map((family) =>
      familySection(
        family,
        docs.filter((doc) => doc.family === family),
      ),
    )
    .join("\n\n");
}

function familySection(family, docs) {
  const lines = [`### ${family}`, "", "| function | answers | gives |", "| --- | --- | --- |"];
  for (const doc of docs) {
    const params = doc.params.map((param) => (param.optional ? `[${param.name}]` : param.name)).join(", ");
    lines.push(`| \`TACK.${doc.id}(${params})\` | ${markdownCell(doc.answers)} | ${markdownCell(doc.summary)} |`);
  }
  const cautions = new Map();
  for (const doc of docs)
    for (const caution of doc.cautions) cautions.set(caution, [...(cautions.get(caution) ?? []), doc.id]);
  if (cautions.size > 0) lines.push("");
  for (const [caution, ids] of cautions) lines.push(`- **Mind, ${ids.join(" and ")}:** ${caution}`);
  return lines.join("\n");
}
