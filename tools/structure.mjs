/**
 * Walks every import of the project and says which break the arrows of tools/arrows.mjs.
 * Fails as well when it looked at nothing, or missed a folder that exists.
 */
import { existsSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { structureRules } from "./arrow-rules.mjs";
import { entryModules, workspaces } from "./arrows.mjs";

const projectRoot = dirname(dirname(fileURLToPath(import.meta.url)));

/**
 * @param {string} root the folder that holds packages/
 * @returns {Promise<{ modules: number, arrows: number, circles: number, problems: string[] }>}
 */
export async function checkStructure(root = projectRoot) {
  const looked = ["packages", "tests", "tools"].filter((folder) => existsSync(join(root, folder)));
  if (looked.length === 0) return { modules: 0, arrows: 0, circles: 0, problems: ["no module was looked at"] };
  const result = await cruiseFolders(root, looked);
  const own = result.modules.filter((module) => /^(packages|tests|tools)\//.test(module.source));
  const violations = result.summary.violations;
  const sources = own.map((module) => module.source);
  return {
    modules: own.length,
    arrows: own.reduce((sum, module) => sum + module.dependencies.length, 0),
    circles: violations.filter((violation) => violation.rule.name === "no-circles").length,
    problems: [
      ...violations.map(describeViolation),
      ...missedFolders(root, sources),
      ...strayFiles(sources),
      ...own.flatMap(wrongRoads),
    ],
  };
}

/**
 * @param {string} root
 * @param {string[]} folders
 * @returns {Promise<import("dependency-cruiser").ICruiseResult>}
 */
async function cruiseFolders(root, folders) {
  const { cruise } = await import("dependency-cruiser");
  const { default: extractTSConfig } = await import("dependency-cruiser/config-utl/extract-ts-config");
  const { default: config } = await import("../.dependency-cruiser.mjs");
  const { enhancedResolveOptions, tsConfig, ...options } = config.options;
  const found = await cruise(
    folders,
    /** @type {any} */ ({
      ...options,
      ruleSet: { forbidden: config.forbidden },
      validate: true,
      baseDir: root,
      exclude: { path: [options.exclude.path, "^packages/[^/]+/[^/]+\\.config\\.ts$"] },
    }),
    /** @type {any} */ (enhancedResolveOptions),
    { tsConfig: extractTSConfig(join(projectRoot, tsConfig.fileName)) },
  );
  return /** @type {import("dependency-cruiser").ICruiseResult} */ (found.output);
}

/** @param {import("dependency-cruiser").IViolation} violation */
function describeViolation(violation) {
  const way = [violation.from, ...(violation.cycle?.map((each) => each.name) ?? [violation.to])];
  const arrow = way.length === 2 && way[0] === way[1] ? violation.from : way.join(" → ");
  return `${violation.rule.name}: ${arrow}`;
}

/**
 * Folders with modules in them that the walk did not see.
 *
 * @param {string} root
 * @param {string[]} sources
 */
function missedFolders(root, sources) {
  if (sources.length === 0) return ["no module was looked at"];
  const problems = [];
  for (const { name: workspace } of workspaces) {
    const folder = `packages/${workspace}/src`;
    if (!existsSync(join(root, folder))) continue;
    for (const entry of readdirSync(join(root, folder), { withFileTypes: true })) {
      const path = `${folder}/${entry.name}/`;
      if (!entry.isDirectory() || !holdsModules(join(root, path))) continue;
      if (!sources.some((source) => source.startsWith(path))) problems.push(`${path} holds modules but was not seen`);
    }
  }
  const programs = sources.filter((source) => /^packages\/(node|web)\/src\//.test(source));
  if (programs.length > 0 && !programs.some((source) => new RegExp(entryModules).test(source)))
    problems.push("no module was seen that a program starts from");
  return problems;
}

/** @param {string} folder @returns {boolean} */
function holdsModules(folder) {
  return readdirSync(folder, { withFileTypes: true }).some((entry) =>
    entry.isDirectory() ? holdsModules(join(folder, entry.name)) : /\.tsx?$/.test(entry.name),
  );
}

/**
 * Modules that lie in no folder of the plan.
 *
 * @param {string[]} sources
 */
function strayFiles(sources) {
  const known = new Map(workspaces.map((each) => [each.name, new Set(each.folders.map((folder) => folder.name))]));
  return sources.flatMap((source) => {
    const [, workspace, folder] = /^packages\/([^/]+)\/src\/(?:([^/]+)\/)?/.exec(source) ?? [];
    if (workspace === undefined) return [];
    if (folder !== undefined && known.get(workspace)?.has(folder)) return [];
    return [
      `${source} lies in no folder of tools/arrows.mjs; give the folder its place in the order there, with a reason`,
    ];
  });
}

/**
 * Inside a folder imports are relative; from folder to folder they go by #folder/file, between workspaces by name.
 *
 * @param {import("dependency-cruiser").IModule} module
 */
function wrongRoads(module) {
  const here = folderOf(module.source);
  if (here === undefined) return [];
  return module.dependencies.flatMap((dependency) => {
    const there = folderOf(dependency.resolved);
    if (there === undefined) return [];
    const written = `${module.source}: "${dependency.module}"`;
    if (here.workspace !== there.workspace)
      return dependency.module.startsWith(".")
        ? [`${written} leaves the workspace; import it as @oncethrough/${there.workspace}/${there.folder}/…`]
        : [];
    if (dirname(module.source) === dirname(dependency.resolved) && dependency.module.startsWith("#"))
      return [`${written} lies in the same folder; import it by its relative path`];
    if (here.folder !== there.folder && dependency.module.startsWith("."))
      return [`${written} leaves the folder; import it as #${there.folder}/…`];
    return [];
  });
}

/** @param {string} path */
function folderOf(path) {
  const [, workspace, folder] = /^packages\/([^/]+)\/src\/([^/]+)\//.exec(path) ?? [];
  return workspace === undefined || folder === undefined ? undefined : { workspace, folder };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { modules, arrows, circles, problems } = await checkStructure();
  for (const problem of problems) console.log(problem);
  for (const { name, comment } of structureRules.forbidden)
    if (problems.some((problem) => problem.startsWith(`${name}: `))) console.log(`  ${name}, because: ${comment}`);
  const circleWords = `${circles} ${circles === 1 ? "circle" : "circles"}`;
  console.log(`${modules} modules, ${arrows} arrows, ${circleWords}, ${problems.length} problems`);
  if (problems.length > 0) process.exitCode = 1;
}
