import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { structureRules } from "../../tools/arrow-rules.mjs";
import { checkStructure } from "../../tools/structure.mjs";

const roots: string[] = [];

/** A small project on disk: the workspaces' manifests and the modules given. */
function plant(modules: Readonly<Record<string, string>>): string {
  const root = realpathSync(mkdtempSync(join(tmpdir(), "structure-")));
  roots.push(root);
  const maps = { "#*.tsx": "./src/*.tsx", "#*": { source: "./src/*.ts" } };
  for (const name of ["engine", "node", "web"]) {
    const exports = { "./*": { source: "./src/*.ts" } };
    write(root, `packages/${name}/package.json`, JSON.stringify({ name, type: "module", imports: maps, exports }));
    mkdirSync(join(root, "node_modules/@oncethrough"), { recursive: true });
    symlinkSync(join(root, "packages", name), join(root, "node_modules/@oncethrough", name));
  }
  for (const [path, text] of Object.entries(modules)) write(root, path, text);
  return root;
}

function write(root: string, path: string, text: string): void {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
}

afterAll(() => {
  for (const root of roots) rmSync(root, { recursive: true, force: true });
});

const clean = {
  "packages/engine/src/standard/gravity.ts": "export const gravity = 9.80665;",
  "packages/engine/src/fluid/state.ts": "export type State = { readonly dryBulb: number };",
  "packages/engine/src/fluid/air.ts":
    'import { gravity } from "#standard/gravity";\nimport type { State } from "./state.ts";\nexport const weigh = (state: State) => gravity * state.dryBulb;',
  "packages/node/src/cli/main.ts": 'import { weigh } from "@oncethrough/engine/fluid/air";\nweigh({ dryBulb: 1 });',
};

/** Each planted fault: the modules that make it, and how the finding has to begin. */
const faults: Record<string, { modules: Record<string, string>; finding: string }> = {
  "a type import that points down the order": {
    modules: {
      "packages/engine/src/fluid/steam.ts": 'import type { Coil } from "#section/coil";\nexport type Steam = Coil;',
      "packages/engine/src/section/coil.ts": "export type Coil = number;",
    },
    finding: "engine-fluid-looks-only-up: packages/engine/src/fluid/steam.ts → packages/engine/src/section/coil.ts",
  },
  "one kind of section that imports another": {
    modules: {
      "packages/engine/src/section/louver/rate.ts":
        'import { mesh } from "../hood/mesh.ts";\nexport const rate = mesh;',
      "packages/engine/src/section/hood/mesh.ts": "export const mesh = 1;",
    },
    finding:
      "section-kinds-are-strangers: packages/engine/src/section/louver/rate.ts → packages/engine/src/section/hood/mesh.ts",
  },
  "a quoted table that imports": {
    modules: {
      "packages/engine/src/standard/limit.ts": 'import { inch } from "#quantity/inch";\nexport const limit = inch;',
      "packages/engine/src/quantity/inch.ts": "export const inch = 0.0254;",
    },
    finding: "standard-imports-nothing: packages/engine/src/standard/limit.ts → packages/engine/src/quantity/inch.ts",
  },
  "an engine module that reads the disk": {
    modules: { "packages/engine/src/weather/read.ts": 'import { readFileSync } from "node:fs";\nreadFileSync("x");' },
    finding: "engine-no-node-builtins: packages/engine/src/weather/read.ts → fs",
  },
  "an engine module that leans on an unlisted package": {
    modules: {
      "packages/engine/src/numerics/fit.ts": 'import fit from "curve-fit";\nfit();',
      "node_modules/curve-fit/package.json": '{ "name": "curve-fit", "main": "fit.js" }',
      "node_modules/curve-fit/fit.js": "module.exports = () => 0;",
    },
    finding: "engine-listed-packages-only: packages/engine/src/numerics/fit.ts → node_modules/curve-fit/fit.js",
  },
  "two modules bound in a circle by types alone": {
    modules: {
      "packages/engine/src/unit/first.ts": 'import type { Second } from "./second.ts";\nexport type First = Second;',
      "packages/engine/src/unit/second.ts": 'import type { First } from "./first.ts";\nexport type Second = First | 1;',
    },
    finding: "no-circles: packages/engine/src/unit/first.ts → packages/engine/src/unit/second.ts",
  },
  "a page that imports the disk side": {
    modules: {
      "packages/web/src/state/open.ts": 'import { open } from "@oncethrough/node/files/open";\nopen();',
      "packages/node/src/files/open.ts": "export const open = () => 0;",
    },
    finding: "web-knows-its-workspaces: packages/web/src/state/open.ts → packages/node/src/files/open.ts",
  },
  "a program that imports a test": {
    modules: {
      "packages/engine/src/duty/day.ts": 'import { sample } from "./day.test-data.ts";\nexport const day = sample;',
      "packages/engine/src/duty/day.test-data.ts": "export const sample = 1;",
    },
    finding: "program-never-imports-tests: packages/engine/src/duty/day.ts → packages/engine/src/duty/day.test-data.ts",
  },
  "a second door to the disk": {
    modules: { "packages/node/src/server/page.ts": 'import { readFileSync } from "node:fs";\nreadFileSync("x");' },
    finding: "disk-only-through-files: packages/node/src/server/page.ts → fs",
  },
  "an import that leads nowhere": {
    modules: { "packages/engine/src/chart/axis.ts": 'import { scale } from "./scale.ts";\nexport const axis = scale;' },
    finding: "everything-resolves: packages/engine/src/chart/axis.ts → ./scale.ts",
  },
  "a module that no program reaches": {
    modules: { "packages/engine/src/drawing/lonely.ts": "export const lonely = 1;" },
    finding: "everything-is-reached: packages/engine/src/drawing/lonely.ts",
  },
  "a folder without a place in the order": {
    modules: { "packages/engine/src/drawer/odds.ts": "export const odds = 1;" },
    finding: "packages/engine/src/drawer/odds.ts lies in no folder",
  },
  "a relative import that leaves its folder": {
    modules: {
      "packages/engine/src/year/hour.ts":
        'import { gravity } from "../standard/gravity.ts";\nexport const hour = gravity;',
    },
    finding: 'packages/engine/src/year/hour.ts: "../standard/gravity.ts" leaves the folder',
  },
  "a mapped import of a neighbour in the same folder": {
    modules: { "packages/engine/src/fluid/ice.ts": 'import { weigh } from "#fluid/air";\nexport const ice = weigh;' },
    finding: 'packages/engine/src/fluid/ice.ts: "#fluid/air" lies in the same folder',
  },
  "a relative import that leaves its workspace": {
    modules: {
      "packages/web/src/view/chart.ts":
        'import { gravity } from "../../../engine/src/standard/gravity.ts";\nexport const chart = gravity;',
    },
    finding: 'packages/web/src/view/chart.ts: "../../../engine/src/standard/gravity.ts" leaves the workspace',
  },
  "a folder with modules that the walk does not see": {
    modules: { "packages/engine/src/dist/hidden.ts": "export const hidden = 1;" },
    finding: "packages/engine/src/dist/ holds modules but was not seen",
  },
};

describe("the structure check", () => {
  let problems: string[] = [];
  beforeAll(async () => {
    const planted = Object.assign({}, clean, ...Object.values(faults).map((fault) => fault.modules));
    ({ problems } = await checkStructure(plant(planted)));
  });

  it.each(Object.entries(faults))("finds %s", (_name, { finding }) => {
    expect(
      problems.some((problem) => problem.startsWith(finding)),
      problems.join("\n"),
    ).toBe(true);
  });

  it("has a reason in words for every rule", () => {
    expect(structureRules.forbidden.length).toBeGreaterThan(30);
    for (const { name, comment } of structureRules.forbidden) expect(comment, name).toMatch(/^[A-Za-z].{30,}\.$/);
  });

  it("passes a sound tree and counts its modules and arrows", async () => {
    expect(await checkStructure(plant(clean))).toEqual({ modules: 4, arrows: 3, circles: 0, problems: [] });
  });

  it("fails when it saw no module", async () => {
    const { problems: found } = await checkStructure(plant({}));
    expect(found).toContain("no module was looked at");
  });

  it("fails when no program's first module was seen", async () => {
    const { problems: found } = await checkStructure(
      plant({ "packages/web/src/state/job.ts": "export const job = 1;" }),
    );
    expect(found).toContain("no module was seen that a program starts from");
  });
});
