import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Where the add-in is served from while it is developed; manifest.xml is written for it. */
export const DEVELOPMENT_ADDRESS = "https://localhost:3000";

/**
 * The manifest for another address: every occurrence of the development address is replaced, since one that stays
 * behind breaks the add-in only on other people's machines.
 *
 * @param {string} manifest manifest.xml as text
 * @param {string} address where the files of dist/ are served from, https, for example https://stitch.example.org/tack
 * @param {string} [version] the version to give it, for example 1.0.1.0; hosts read the functions anew only when it rises
 */
export function manifestAddress(manifest, address, version) {
  const url = URL.canParse(address) ? new URL(address) : null;
  if (url === null || url.protocol !== "https:" || url.search !== "" || url.hash !== "") {
    throw new Error(
      `"${address}" cannot be used as the address; give one that begins with https:// and has no ? or #.`,
    );
  }
  if (version !== undefined && !/^\d{1,5}(\.\d{1,5}){2,3}$/.test(version)) {
    throw new Error(`"${version}" cannot be used as the version; give three or four numbers, for example 1.0.1.0.`);
  }
  const served = manifest
    .replaceAll(`<AppDomain>${DEVELOPMENT_ADDRESS}</AppDomain>`, `<AppDomain>${url.origin}</AppDomain>`)
    .replaceAll(DEVELOPMENT_ADDRESS, escapeXml(url.href.replace(/\/+$/, "")));
  return version === undefined ? served : served.replace(/<Version>[^<]*<\/Version>/, `<Version>${version}</Version>`);
}

function escapeXml(text) {
  return text.replace(/&/g, "&amp;").replace(/"/g, "&quot;").replace(/</g, "&lt;");
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [address, version, output = "dist/manifest.xml"] = process.argv.slice(2);
  if (address === undefined) {
    console.error("Usage: node src/build/manifestAddress.mjs https://where.it/is/served [version] [output]");
    process.exit(1);
  }
  const source = readFileSync(fileURLToPath(new URL("../../manifest.xml", import.meta.url)), "utf8");
  try {
    writeFileSync(output, manifestAddress(source, address, version));
    console.log(`${output} is written for ${address}`);
  } catch (error) {
    console.error(error.message);
    process.exit(1);
  }
}
