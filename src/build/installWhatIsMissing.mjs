import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

/**
 * Installs the packages when they are absent or older than the lock file. Plain Node: it runs before
 * anything is installed. Stops the process with the package client's own words when that fails.
 */
export function installWhatIsMissing() {
  const marker = `${root}node_modules/.package-lock.json`;
  if (existsSync(marker) && statSync(marker).mtimeMs >= statSync(`${root}package-lock.json`).mtimeMs - 1000) return;
  console.log("Installing what is missing (once, some minutes) …");
  const run = spawnSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: root,
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (run.status !== 0) {
    console.error("The packages could not be installed; see above. Is there a connection to the package registry?");
    process.exit(run.status ?? 1);
  }
}
