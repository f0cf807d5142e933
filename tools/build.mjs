/** Builds the program: TypeScript to JavaScript in each workspace's dist folder, and the page to packages/web/dist/site. */
import { existsSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { workspaces } from "./arrows.mjs";
import { Complaint, commandScript, projectRoot, runQuietly, runTool } from "./run.mjs";

/**
 * @throws {Complaint} with the compiler's words when something does not build
 */
export async function build() {
  const present = workspaces.map((each) => each.name).filter((name) => existsSync(join(projectRoot, "packages", name)));
  for (const name of present) removeStale(name);
  const types = await runQuietly(process.execPath, [
    commandScript("typescript", "tsc"),
    "-b",
    ...present.map((name) => join("packages", name)),
  ]);
  if (types.code !== 0) throw new Complaint(`the TypeScript build failed:\n${types.output}`);
  const page = await runQuietly(process.execPath, [
    commandScript("vite"),
    "build",
    join("packages", "web"),
    "--outDir",
    join("dist", "site"),
    "--emptyOutDir",
    "--logLevel",
    "warn",
  ]);
  if (page.code !== 0) throw new Complaint(`the build of the page failed:\n${page.output}`);
}

/**
 * Removes built files whose source is gone, so that nothing left over can be imported.
 *
 * @param {string} name of the workspace
 */
function removeStale(name) {
  const root = join(projectRoot, "packages", name);
  const dist = join(root, "dist");
  if (!existsSync(dist)) return;
  for (const path of readdirSync(dist, { recursive: true, encoding: "utf8" })) {
    const built = path.replaceAll("\\", "/");
    if (built.startsWith("site/")) continue;
    const module = /^(?:types\/)?(.+?)(?:\.d\.ts|\.js)(?:\.map)?$/.exec(built)?.[1];
    if (module === undefined) continue;
    const source = join(root, "src", module);
    if (!existsSync(`${source}.ts`) && !existsSync(`${source}.tsx`)) rmSync(join(dist, path));
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await runTool(async () => build().then(() => 0));
