import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

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
  },
});
