import { mkdtempSync, existsSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Browser } from "playwright-core";
import { findBrowser } from "./findBrowser";

const QUIET = [
  "--no-sandbox",
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** A browser for the suite: an installed one, else the one that comes as a package. */
export async function launchBrowser(): Promise<Browser> {
  const installed = findBrowser();
  if (installed !== null) return chromium.launch({ executablePath: installed, args: QUIET });
  // The package unpacks its program into the temporary folder, and brings its own libraries only when it takes the
  // machine for the one it was made for.
  process.env.TMPDIR = mkdtempSync(join(tmpdir(), "bench-browser-"));
  if (!existsSync("/usr/lib/x86_64-linux-gnu/libnss3.so")) process.env.AWS_LAMBDA_JS_RUNTIME = "nodejs22.x";
  const { default: packaged } = await import("@sparticuz/chromium");
  return chromium.launch({ executablePath: await packaged.executablePath(), args: [...packaged.args, ...QUIET] });
}
