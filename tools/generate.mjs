/**
 * npm run generate: writes every file that is made from the code. `-- --check` writes nothing and fails on a difference.
 * A generator gives the file's whole text; add one to the list with the file it makes.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { arrowsPage } from "./arrows-page.mjs";
import { coilPage } from "./coil-page.mjs";
import { coilScatter } from "./coil-scatter.mjs";
import { commandPage } from "./command-page.mjs";
import { ruleNames, rulesPage } from "./rules-page.mjs";
import { Complaint, projectRoot, runTool } from "./run.mjs";
import { importSources } from "./sources.mjs";

/** @type {ReturnType<typeof importSources> | undefined} */
let loaded;

/** The modules of the program that generators read, bundled when the first of them asks. */
function sources() {
  loaded ??= importSources("generate", {
    commandTable: "packages/node/src/cli/command-table.ts",
    exitCodes: "packages/node/src/cli/exit-code.ts",
    requirements: "packages/engine/src/rule/requirements.ts",
    rules: "packages/engine/src/rule/rules.ts",
    ruleWords: "packages/engine/src/rule/words.ts",
    runCases: "packages/node/src/reference/run-cases.ts",
    schemas: "packages/node/src/cli/schema/schemas.ts",
  });
  return loaded;
}

/** @type {readonly { file: string, make: () => string | Promise<string> }[]} */
const generators = [
  { file: "docs/arrows.md", make: arrowsPage },
  {
    file: "docs/command-line.md",
    make: async () => {
      const { commandTable, exitCodes } = await sources();
      return commandPage(
        /** @type {import("./command-page.mjs").Table} */ (commandTable),
        /** @type {import("./command-page.mjs").ExitCodes} */ (exitCodes),
      );
    },
  },
  {
    file: "docs/rules.md",
    make: async () => {
      const { requirements, rules, ruleWords } = await sources();
      return rulesPage(
        /** @type {import("./rules-page.mjs").Rules} */ (rules),
        /** @type {import("./rules-page.mjs").Requirements} */ (requirements),
        /** @type {import("./rules-page.mjs").Words} */ (ruleWords),
      );
    },
  },
  {
    file: "packages/engine/src/rule/rule-names.ts",
    make: async () => ruleNames(/** @type {import("./rules-page.mjs").Rules} */ ((await sources()).rules)),
  },
  { file: "docs/validation/coils.md", make: async () => coilPage((await sources()).runCases?.runCases) },
  { file: "docs/validation/coils.svg", make: async () => coilScatter((await sources()).runCases?.runCases) },
  ...[
    "job",
    "rate",
    "design",
    "fan",
    "import-fan",
    "fit-surface",
    "sound",
    "dampers",
    "weigh",
    "draw",
    "check",
    "takeoff",
    "price",
    "weather",
    "year",
    "air",
    "coil",
    "coil-alternatives",
    "read",
  ].map((name) => ({
    file: `schemas/${name}.schema.json`,
    make: async () => `${JSON.stringify((await sources()).schemas?.schemas[name](), undefined, 2)}\n`,
  })),
];

await runTool(async () => {
  const [option, ...more] = process.argv.slice(2);
  if ((option !== undefined && option !== "--check") || more.length > 0)
    throw new Complaint("npm run generate takes --check or nothing.");
  const stale = [];
  for (const { file, make } of generators) {
    const path = join(projectRoot, file);
    const text = await make();
    if (existsSync(path) && readFileSync(path, "utf8") === text) continue;
    stale.push(file);
    if (option !== undefined) continue;
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  if (option === undefined) console.log(stale.length === 0 ? "nothing to write" : `wrote ${stale.join(", ")}`);
  else if (stale.length > 0)
    throw new Complaint(`out of date: ${stale.join(", ")}; run npm run generate and commit it.`);
});
