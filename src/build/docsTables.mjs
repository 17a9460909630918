import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { functionDocs } from "./functionDocs.mjs";
import { loadSource } from "./loadSource.mjs";

const README = fileURLToPath(new URL("../../README.md", import.meta.url));

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
    lines.push(`| \`TACK.${doc.id}(${params})\` | ${cell(doc.answers)} | ${cell(doc.summary)} |`);
  }
  const cautions = new Map();
  for (const doc of docs)
    for (const caution of doc.cautions) cautions.set(caution, [...(cautions.get(caution) ?? []), doc.id]);
  if (cautions.size > 0) lines.push("");
  for (const [caution, ids] of cautions) lines.push(`- **Mind, ${ids.join(" and ")}:** ${caution}`);
  return lines.join("\n");
}

/** The checks, gravest first, with what each looks for, why it matters and whether it can be mended at a click. */
export function checksTable(rules) {
  const order = [...new Set(["error", "warning", "advice", ...rules.map((rule) => rule.severity)])];
  const sorted = [...rules].sort(
    (a, b) => order.indexOf(a.severity) - order.indexOf(b.severity) || (a.id < b.id ? -1 : 1),
  );
  const lines = ["| check | severity | looks for | why | mends |", "| --- | --- | --- | --- | --- |"];
  for (const rule of sorted) {
    lines.push(
      `| \`${rule.id}\` | ${rule.severity} | ${cell(rule.about)} | ${cell(rule.why)} | ${rule.fixable ? "yes" : ""} |`,
    );
  }
  return lines.join("\n");
}

function cell(text) {
  return text.replace(/\s+/g, " ").replaceAll("|", "\\|").trim();
}

/** The text with what stands between `<!-- name:begin -->` and `<!-- name:end -->` replaced. */
export function replaceBetween(text, name, content) {
  const begin = `<!-- ${name}:begin -->`;
  const end = `<!-- ${name}:end -->`;
  const from = text.indexOf(begin);
  const until = text.indexOf(end);
  if (from < 0 || until < from) throw new Error(`README.md needs the lines ${begin} and ${end}, in this order.`);
  return `${text.slice(0, from + begin.length)}\n\n${content}\n\n${text.slice(until)}`;
}

/** README.md as it should be: the text now, and with the generated tables fresh. */
async function freshReadme() {
  const text = existsSync(README) ? readFileSync(README, "utf8") : "";
  const { allRules } = await loadSource("src/checks/allRules.ts");
  const withFunctions = replaceBetween(text, "functions", functionsTable(functionDocs()));
  return { text, fresh: replaceBetween(withFunctions, "checks", checksTable(allRules)) };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  try {
    const { text, fresh } = await freshReadme();
    if (text === fresh) console.log("README.md: the tables are up to date.");
    else if (process.argv.includes("--check")) throw new Error("README.md: the tables are stale; run npm run docs.");
    else {
      writeFileSync(README, fresh);
      console.log("README.md: the tables are written.");
    }
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
