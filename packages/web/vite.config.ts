import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";

const placeOf = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** What the bundler tells of a module. */
interface Modules {
  readonly getModuleInfo: (id: string) => { readonly importedIds: readonly string[] } | null;
}

const firstModules = new Set<string>();

/** Whether the page needs a module before it shows anything: all that its program imports without being asked to later. */
function isFirst(id: string, modules: Modules): boolean {
  const visit = (each: string) => {
    if (firstModules.has(each)) return;
    firstModules.add(each);
    for (const next of modules.getModuleInfo(each)?.importedIds ?? []) visit(next);
  };
  if (firstModules.size === 0) visit(placeOf("src/app/main.tsx"));
  return firstModules.has(id);
}

/** The program that keeps the page's files, beside the page so that it may stand before all of it. */
const offline = "offline.js";

/** Writes into the program that keeps the page's files which they are, once all of them are there. */
function nameKeptFiles(): Plugin {
  return {
    name: "name-kept-files",
    apply: "build",
    writeBundle({ dir = "" }) {
      const files = readdirSync(dir, { recursive: true, withFileTypes: true })
        .filter((each) => each.isFile())
        .map((each) =>
          join(each.parentPath, each.name)
            .slice(dir.length + 1)
            .replaceAll("\\", "/"),
        )
        .filter((file) => file !== offline)
        .sort();
      const hash = createHash("sha256");
      for (const file of files) hash.update(readFileSync(join(dir, file)));
      const names = [...files.filter((file) => file !== "index.html"), "./"];
      const said = `const builtFiles=${JSON.stringify(names)},builtName="oncethrough ${hash.digest("hex").slice(0, 16)}";`;
      writeFileSync(join(dir, offline), `${said}\n${readFileSync(join(dir, offline), "utf8")}`);
    },
  };
}

export default defineConfig({
  plugins: [react(), nameKeptFiles()],
  base: "./",
  resolve: { conditions: ["source", "module", "browser", "development|production"] },
  worker: { format: "es" },
  build: {
    outDir: "dist/site",
    emptyOutDir: true,
    target: "es2023",
    // The page is served under a policy that allows files of its own origin only, so nothing is written inline.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1000,
    rolldownOptions: {
      input: { index: placeOf("index.html"), offline: placeOf("src/app/offline-worker.ts") },
      output: {
        entryFileNames: ({ name }) => (name === "offline" ? offline : "assets/[name]-[hash].js"),
        // One file of what is needed first: dozens of small ones compress worse and cost a request each.
        codeSplitting: { groups: [{ name: (id, modules) => (isFirst(id, modules) ? "first" : null) }] },
      },
    },
  },
});
