/** npm run reference: runs files of published cases against the program. See packages/node/src/reference/main.ts. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { ensureInstalled } from "./install.mjs";
import { projectRoot, runTool } from "./run.mjs";

for (const stream of [process.stdout, process.stderr]) {
  // A reader that has seen enough (`| head`) closes the pipe.
  stream.on("error", (error) => {
    if (/** @type {NodeJS.ErrnoException} */ (error).code !== "EPIPE") throw error;
  });
}

function ownCases() {
  const folder = join(projectRoot, "reference", "cases");
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => join(folder, name));
}

await runTool(async () => {
  await ensureInstalled();
  const { importSources } = await import("./sources.mjs");
  const { main } = await importSources("reference", { main: "packages/node/src/reference/main.ts" });
  return main.runReference(process.argv.slice(2), {
    // npm changes to the project's folder; paths are meant from where the command was typed.
    folder: process.env.INIT_CWD ?? process.cwd(),
    ownCases: ownCases(),
    output: (/** @type {string} */ text) => process.stdout.write(text),
    errors: (/** @type {string} */ text) => process.stderr.write(text),
  });
});
