import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";

/** How a browser is started: its program, and where that finds its libraries and fonts. */
export interface BrowserProgram {
  readonly executablePath: string;
  readonly env: Readonly<Record<string, string>>;
}

const UNPACK = `
  const { default: chromium } = await import("@sparticuz/chromium");
  const executablePath = await chromium.executablePath();
  console.log(JSON.stringify({ executablePath, env: process.env }));`;

/** Large enough to be unpacked once and not for every suite. */
const FOLDER = join(__dirname, "../../node_modules/.cache/browser");

/**
 * The browser that comes as a package, unpacked into a folder of its own.
 *
 * In a process of its own, since the package is a module that the test runner cannot load. It brings its own libraries
 * only when it takes the machine for the one it was made for.
 */
export function packagedBrowser(): BrowserProgram {
  mkdirSync(FOLDER, { recursive: true });
  const env: NodeJS.ProcessEnv = { ...process.env, TMPDIR: FOLDER };
  if (!existsSync("/usr/lib/x86_64-linux-gnu/libnss3.so")) env.AWS_LAMBDA_JS_RUNTIME = "nodejs22.x";
  const said = execFileSync(process.execPath, ["--input-type=module", "--eval", UNPACK], {
    cwd: __dirname,
    env,
    encoding: "utf8",
  });
  return JSON.parse(said) as BrowserProgram;
}
