/** Runs TypeScript of the project from a tool: bundled once to plain JavaScript, so that speed is that of the built program. */
import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "vite";
import { projectRoot } from "./run.mjs";

/**
 * Bundles modules with all they import from the project; packages stay outside.
 *
 * @param {string} name of the folder under node_modules/.cache that takes the bundle
 * @param {Readonly<Record<string, string>>} entries from a name to the module's path in the project
 * @returns {Promise<Record<string, string>>} from a name to the path of its bundled module
 */
export async function bundleSources(name, entries) {
  const outDir = join(projectRoot, "node_modules", ".cache", "oncethrough", name);
  rmSync(outDir, { recursive: true, force: true });
  mkdirSync(outDir, { recursive: true });
  await build({
    root: projectRoot,
    configFile: false,
    logLevel: "warn",
    resolve: { conditions: ["source"] },
    ssr: { noExternal: [/^@oncethrough\//], resolve: { conditions: ["source"] } },
    build: {
      ssr: true,
      outDir,
      emptyOutDir: false,
      minify: false,
      target: "node20",
      rolldownOptions: {
        input: Object.fromEntries(Object.entries(entries).map(([key, path]) => [key, join(projectRoot, path)])),
        output: { entryFileNames: "[name].mjs", chunkFileNames: "[name]-[hash].mjs" },
      },
    },
  });
  return Object.fromEntries(Object.keys(entries).map((key) => [key, join(outDir, `${key}.mjs`)]));
}

/**
 * Bundles modules as `bundleSources` does and imports them.
 *
 * @param {string} name of the folder under node_modules/.cache that takes the bundle
 * @param {Readonly<Record<string, string>>} entries from a name to the module's path in the project
 * @returns {Promise<Record<string, any>>} from a name to its module's exports
 */
export async function importSources(name, entries) {
  const bundled = await bundleSources(name, entries);
  const modules = Object.entries(bundled).map(async ([key, path]) => [key, await import(pathToFileURL(path).href)]);
  return Object.fromEntries(await Promise.all(modules));
}
