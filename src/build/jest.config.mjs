import { fileURLToPath } from "node:url";

/** One runner for everything; the browser suite is chosen by path. */
export default {
  rootDir: fileURLToPath(new URL("../..", import.meta.url)),
  roots: ["<rootDir>/tests"],
  testEnvironment: "node",
  testMatch: ["**/*.test.ts", "**/*.test.tsx"],
  transform: {
    "^.+\\.(t|j|mj)sx?$": [
      "@swc/jest",
      {
        jsc: {
          target: "es2022",
          parser: { syntax: "typescript", tsx: true },
          transform: { react: { runtime: "automatic" } },
        },
        module: { type: "commonjs" },
      },
    ],
  },
  transformIgnorePatterns: ["/node_modules/(?!(@cj-tech-master|luxon|lodash-es|nanoid|kdbush|quickselect|rbush)/)"],
  moduleNameMapper: { "\\.css$": "<rootDir>/tests/emptyStyles.ts" },
};
