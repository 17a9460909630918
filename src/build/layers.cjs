/** Which folder may import which: the house of DEVELOPERS.md, enforced. */
const may = {
  domain: ["domain"],
  sheet: ["sheet", "domain"],
  checks: ["checks", "sheet", "domain"],
  functions: ["functions", "sheet", "domain"],
  excel: ["excel", "sheet", "domain"],
  pane: ["pane", "checks", "sheet", "domain"],
  bench: ["bench", "pane", "functions", "checks", "sheet", "domain"],
};

const layers = Object.entries(may).map(([folder, targets]) => ({
  name: `${folder}-imports-only-${targets.join("-")}`,
  severity: "error",
  from: { path: `^src/${folder}/`, pathNot: ["^src/pane/root\\.tsx$", "^src/excel/shell/"] },
  to: { path: "^src/", pathNot: `^src/(${targets.join("|")})/` },
}));

module.exports = {
  forbidden: [
    ...layers,
    {
      name: "the-pane-root-alone-also-imports-excel",
      severity: "error",
      from: { path: "^src/pane/root\\.tsx$" },
      to: { path: "^src/", pathNot: "^src/(pane|excel|checks|sheet|domain)/" },
    },
    {
      name: "the-excel-shell-loads-the-pane-root-and-nothing-else-of-it",
      severity: "error",
      from: { path: "^src/excel/shell/" },
      to: { path: "^src/", pathNot: "^src/(excel/|sheet/|domain/|pane/root\\.tsx$)" },
    },
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    { name: "src-never-imports-tests", severity: "error", from: { path: "^src/" }, to: { path: "^tests/" } },
    {
      name: "nothing-imports-build",
      severity: "error",
      from: { path: "^src/(?!build/)" },
      to: { path: "^src/build/" },
    },
    {
      name: "no-binding-imports-a-binding",
      severity: "error",
      from: { path: "^src/functions/bindings/" },
      to: { path: "^src/functions/bindings/" },
    },
    {
      name: "no-rule-imports-a-rule",
      severity: "error",
      from: { path: "^src/checks/rules/" },
      to: { path: "^src/checks/rules/" },
    },
    {
      name: "the-function-bundle-needs-no-package",
      severity: "error",
      from: { path: "^src/(domain|sheet|checks|functions)/" },
      to: { dependencyTypes: ["npm", "npm-dev", "npm-optional", "npm-peer", "core"] },
    },
    { name: "resolvable", severity: "error", from: {}, to: { couldNotResolve: true, pathNot: "^tackstitch:" } },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      extensions: [".ts", ".tsx", ".mjs", ".js", ".json"],
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default", "types"],
    },
  },
};
