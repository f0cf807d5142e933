import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

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
  if (firstModules.size === 0) visit(new URL("src/app/main.tsx", import.meta.url).pathname);
  return firstModules.has(id);
}

export default defineConfig({
  plugins: [react()],
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
      output: {
        // One file of what is needed first: dozens of small ones compress worse and cost a request each.
        codeSplitting: { groups: [{ name: (id, modules) => (isFirst(id, modules) ? "first" : null) }] },
      },
    },
  },
});
