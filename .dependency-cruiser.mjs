import { structureRules } from "./tools/arrow-rules.mjs";

/** Import arrows and their reasons: see tools/arrows.mjs and docs/arrows.md. Run by tools/structure.mjs. */
export default {
  ...structureRules,
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)dist/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    enhancedResolveOptions: {
      conditionNames: ["source", "import", "node", "default", "types"],
      exportsFields: ["exports"],
      extensions: [".ts", ".tsx", ".mjs", ".js", ".json", ".d.ts"],
      mainFields: ["module", "main", "types"],
    },
  },
};
