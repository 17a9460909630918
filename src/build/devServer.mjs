import { fileURLToPath } from "node:url";
import { getHttpsServerOptions } from "office-addin-dev-certs";
import webpack from "webpack";
import WebpackDevServer from "webpack-dev-server";
import { DEVELOPMENT_ADDRESS } from "./manifestAddress.mjs";
import configure from "./webpack.addin.mjs";

/**
 * Builds the add-in and serves it over https to an Excel on this computer, rebuilding after each change.
 *
 * Excel accepts https alone, so a certificate of this computer's own is made and, after asking, trusted
 * (office-addin-dev-certs). Pages are not reloaded by themselves: nothing may be added to functions.js.
 *
 * @param httpsOptions key, cert and ca
 * @param {number} port
 */
export async function startDevServer(httpsOptions, port) {
  const compiler = webpack(configure({}, { mode: "development" }));
  const server = new WebpackDevServer(
    {
      server: { type: "https", options: httpsOptions },
      host: "localhost",
      port,
      allowedHosts: ["localhost"],
      // Excel on the web asks for functions.json from its own address.
      headers: { "Access-Control-Allow-Origin": "*" },
      hot: false,
      liveReload: false,
      client: false,
      webSocketServer: false,
      static: false,
    },
    compiler,
  );
  await server.start();
  return server;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await startDevServer(await getHttpsServerOptions(), Number(new URL(DEVELOPMENT_ADDRESS).port));
  console.log(`Serving at ${DEVELOPMENT_ADDRESS}; manifest.xml is the file to add to Excel. End with Ctrl+C.`);
}
