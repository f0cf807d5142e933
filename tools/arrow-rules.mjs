/** The arrows of arrows.mjs as rules in the form that dependency-cruiser reads, each with its reason in words. */
import { existsSync, readFileSync } from "node:fs";
import { entryModules, kindFolders, testModules, workspaces, yardsticks } from "./arrows.mjs";

/** @typedef {import("./arrows.mjs").Workspace} Workspace */

/** @param {string} text */
function escaped(text) {
  return text.replace(/[\\^$.*+?()[\]{}|/]/g, "\\$&");
}

/** @param {readonly string[]} names */
function anyOf(names) {
  return `(${names.map(escaped).join("|")})`;
}

/** @param {Workspace} workspace */
function folderRules(workspace) {
  const root = `^packages/${workspace.name}/src/`;
  return workspace.folders.flatMap((folder, place) => {
    const below = workspace.folders.slice(place + 1).map((each) => each.name);
    if (below.length === 0) return [];
    return [
      {
        name: `${workspace.name}-${folder.name}-looks-only-up`,
        comment: `${folder.name}/ holds ${folder.holds}: ${folder.why}.`,
        severity: "error",
        from: { path: `${root}${folder.name}/`, pathNot: testModules },
        to: { path: `${root}${anyOf(below)}/` },
      },
    ];
  });
}

/**
 * The packages that a workspace's manifest lists for the program.
 *
 * @param {Workspace} workspace
 * @returns {string[]}
 */
function listedPackages(workspace) {
  const manifest = new URL(`../packages/${workspace.name}/package.json`, import.meta.url);
  if (!existsSync(manifest)) return [];
  return Object.keys(JSON.parse(readFileSync(manifest, "utf8")).dependencies ?? {});
}

/** @param {Workspace} workspace */
function workspaceRules(workspace) {
  const packages = listedPackages(workspace);
  const from = { path: `^packages/${workspace.name}/src/`, pathNot: testModules };
  const others = workspaces.filter((each) => each !== workspace && !workspace.workspaces.includes(each.name));
  const rules = [
    {
      name: `${workspace.name}-knows-its-workspaces`,
      comment: `${workspace.why}.`,
      severity: "error",
      from,
      to: { path: `^packages/${anyOf(others.map((each) => each.name))}/` },
    },
    {
      name: `${workspace.name}-listed-packages-only`,
      comment: `${workspace.name} leans only on the packages of its own manifest, each named in docs/decisions with a reason; what ships never leans on tools of development.`,
      severity: "error",
      from,
      to:
        packages.length === 0
          ? { path: "node_modules/" }
          : { path: "node_modules/", pathNot: `node_modules/(@types/)?${anyOf(packages)}/` },
    },
  ];
  if (!workspace.builtins)
    rules.push({
      name: `${workspace.name}-no-node-builtins`,
      comment: `${workspace.why}.`,
      severity: "error",
      from,
      to: /** @type {any} */ ({ dependencyTypes: ["core"] }),
    });
  return rules;
}

const kindRules = kindFolders.map(({ workspace, folder, common, why }) => {
  const root = `^packages/${workspace}/src/${folder}/`;
  return {
    name: `${folder}-kinds-are-strangers`,
    comment: `${why}.`,
    severity: "error",
    from: { path: `${root}([^/]+)/`, pathNot: testModules },
    to: { path: `${root}[^/]+/`, pathNot: [`${root}$1/`, ...common.map((name) => `${root}${name}/`)] },
  };
});

const generalRules = [
  {
    name: "no-circles",
    comment:
      "Two modules that need each other are one module, or miss a third; types count, because they bind as hard.",
    severity: "error",
    from: {},
    to: { circular: true },
  },
  {
    name: "standard-imports-nothing",
    comment: "A quoted table stands by itself, so that anybody can check it against the publication.",
    severity: "error",
    from: { path: "^packages/engine/src/standard/", pathNot: testModules },
    to: { pathNot: "^packages/engine/src/standard/" },
  },
  {
    name: "disk-only-through-files",
    comment: "files/ is the only door to the disk: refusals, sizes and encodings are decided there, once.",
    severity: "error",
    from: { path: "^packages/node/src/", pathNot: [testModules, "^packages/node/src/files/"] },
    to: { path: "^(node:)?fs(/promises)?$", dependencyTypes: ["core"] },
  },
  {
    name: "program-never-imports-tests",
    comment: "What ships may not lean on what checks it.",
    severity: "error",
    from: { path: "^packages/[^/]+/src/", pathNot: testModules },
    to: { path: [testModules, "^tools/"] },
  },
  {
    name: "everything-resolves",
    comment: "An import that leads nowhere runs on one machine only.",
    severity: "error",
    from: {},
    to: { couldNotResolve: true },
  },
  {
    name: "everything-is-reached",
    comment:
      "Code that no program starts is either unfinished or left over; what is only there to be held against, says so.",
    severity: "error",
    from: { path: entryModules },
    to: { path: "^packages/[^/]+/src/", pathNot: [testModules, entryModules, ...yardsticks], reachable: false },
  },
];

/** The rules in the form that dependency-cruiser reads. */
export const structureRules = {
  forbidden: [
    ...generalRules,
    ...kindRules,
    ...workspaces.flatMap((each) => [...workspaceRules(each), ...folderRules(each)]),
  ],
};
