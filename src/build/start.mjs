import { installWhatIsMissing } from "./installWhatIsMissing.mjs";

/** Tried first, so that the address stays the same from day to day. */
const USUAL_PORT = 4870;

installWhatIsMissing();
// Only now: what the build imports may have been installed a line ago.
const { benchFolder, buildBench } = await import("./buildBench.mjs");
const { serveBench } = await import("./serveBench.mjs");
await buildBench();
const { port } = await serveBench({ folder: benchFolder, port: Number(process.env.PORT ?? USUAL_PORT) });
console.log(`Tackstitch bench: http://127.0.0.1:${port}/`);
