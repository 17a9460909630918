import jsdoc from "eslint-plugin-jsdoc";
import officeAddins from "eslint-plugin-office-addins";
import tseslint from "typescript-eslint";

const noModuleState = {
  selector:
    "Program > VariableDeclaration[kind='let'], Program > ExportNamedDeclaration > VariableDeclaration[kind='let']",
  message: "No module state: the host may end the runtime at any time.",
};
const noDefaultExport = {
  selector: "ExportDefaultDeclaration",
  message: "No default exports: a file is named for the one thing it exports.",
};
const noReExport = {
  selector: "ExportAllDeclaration, ExportNamedDeclaration[source]",
  message: "No re-export barrels: import from where it stands.",
};
const noClock = {
  selector:
    "NewExpression[callee.name='Date'][arguments.length=0], CallExpression[callee.object.name='Date'][callee.property.name='now']",
  message: "Nothing here reads the clock: take the day as an argument.",
};
const noRandom = {
  selector: "CallExpression[callee.object.name='Math'][callee.property.name='random']",
  message: "Seeded numbers only.",
};

export default tseslint.config(
  { ignores: ["dist/**", "node_modules/**", "coverage/**", ".cache/**"] },
  ...tseslint.configs.recommended,
  {
    files: ["src/**/*.{ts,tsx}", "tests/**/*.{ts,tsx}"],
    plugins: { jsdoc },
    rules: {
      "no-restricted-syntax": ["error", noModuleState, noDefaultExport, noReExport],
      "@typescript-eslint/no-non-null-assertion": "off",
      "@typescript-eslint/consistent-type-imports": ["error", { disallowTypeAnnotations: false }],
      "max-lines": ["error", { max: 400, skipBlankLines: true, skipComments: true }],
      eqeqeq: "error",
      "no-console": "error",
      "prefer-const": "error",
    },
  },
  {
    // A test file keeps what its set-up made between its tests.
    files: ["tests/**"],
    rules: { "no-restricted-syntax": ["error", noDefaultExport, noReExport] },
  },
  {
    files: ["src/{domain,sheet,checks,functions}/**/*.ts"],
    rules: {
      "no-restricted-syntax": ["error", noModuleState, noDefaultExport, noReExport, noClock, noRandom],
      "no-restricted-globals": [
        "error",
        "window",
        "document",
        "fetch",
        "location",
        "Office",
        "Excel",
        "localStorage",
        "setTimeout",
        "setInterval",
      ],
      "jsdoc/require-jsdoc": [
        "error",
        {
          publicOnly: true,
          require: { FunctionDeclaration: true },
          contexts: ["TSInterfaceDeclaration", "TSTypeAliasDeclaration"],
        },
      ],
    },
  },
  {
    files: ["src/{pane,bench}/**/*.{ts,tsx}"],
    rules: { "no-restricted-globals": ["error", "Office", "Excel"] },
  },
  {
    // The vendor's metadata reader knows nothing but any and any[][].
    files: ["src/functions/bindings/*.ts"],
    rules: { "@typescript-eslint/no-explicit-any": "off" },
  },
  {
    files: ["src/excel/**/*.ts"],
    plugins: { "office-addins": officeAddins },
    rules: {
      "office-addins/no-context-sync-in-loop": "error",
      "office-addins/load-object-before-read": "error",
      "office-addins/no-navigational-load": "error",
    },
  },
  { files: ["src/build/**"], rules: { "@typescript-eslint/no-require-imports": "off" } },
);
