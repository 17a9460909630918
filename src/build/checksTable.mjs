import { markdownCell } from "./markdownCell.mjs";

/** The checks, gravest first, with what each looks for, why it matters and whether it can be mended at a click. */
export function checksTable(rules) {
  const order = [...new Set(["error", "warning", "note", ...rules.map((rule) => rule.severity)])];
  const sorted = [...rules].sort(
    (a, b) => order.indexOf(a.severity) - order.indexOf(b.severity) || (a.id < b.id ? -1 : 1),
  );
  const lines = ["| check | severity | looks for | why | mends |", "| --- | --- | --- | --- | --- |"];
  for (const rule of sorted) {
    lines.push(
      `| \`${rule.id}\` | ${rule.severity} | ${markdownCell(rule.about)} | ${markdownCell(rule.why)} | ${rule.fixable ? "yes" : ""} |`,
    );
  }
  return lines.join("\n");
}
