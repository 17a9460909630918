import { chromium, type Browser } from "playwright-core";
import { findBrowser } from "./findBrowser";
import { packagedBrowser } from "./packagedBrowser";

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
  const program = installed === null ? packagedBrowser() : { executablePath: installed };
  return chromium.launch({ ...program, args: QUIET });
}
