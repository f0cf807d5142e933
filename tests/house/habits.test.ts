import { basename } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { filesBelow, programFiles, readText, workspaceNames } from "./project.ts";

const ownFolders = [
  "packages",
  "tools",
  "tests",
  "docs",
  "reference",
  "catalogue",
  "shop",
  "profiles",
  "examples",
  ".ci",
];
const ownFiles = [
  ...ownFolders.flatMap(filesBelow),
  ...[
    "README.md",
    "CONTRIBUTING.md",
    "package.json",
    "vitest.config.ts",
    "biome.json",
    "knip.json",
    ".dependency-cruiser.mjs",
  ],
];
const codeFiles = ownFiles.filter((path) => /\.(tsx?|mjs)$/.test(path));

/** Longest file without a reason, in lines. */
const longest = 300;

/** Longer files, each with its reason. */
const longFiles: Readonly<Record<string, string>> = {
  "packages/engine/src/quantity/unit-table.ts": "one table of every unit with its factor",
  "packages/node/src/cli/command-table.ts": "one table of every command with its options",
};

describe("files", () => {
  it("are seen", () => {
    expect(programFiles.length).toBeGreaterThan(0);
  });

  it("have names of whole lower-case words joined by hyphens", () => {
    const odd = codeFiles.filter(
      (path) => !/^\.?[a-z0-9]+(-[a-z0-9]+)*(\.[a-z-]+)*\.(ts|tsx|mjs)$/.test(basename(path)),
    );
    expect(odd).toEqual([]);
  });

  it("have a home of their own: no drawer of odds and ends, no index that passes things on", () => {
    const drawer = /(^|\/)(utils?|helpers?|common|misc|managers?|lib|shared)(\/|\.[a-z]+$)|(^|\/)index\.(tsx?|mjs)$/;
    expect(ownFiles.filter((path) => drawer.test(path))).toEqual([]);
  });

  it(`have at most ${longest} lines, or a reason`, () => {
    const long = codeFiles.filter((path) => readText(path).trimEnd().split("\n").length > longest);
    expect(long.filter((path) => longFiles[path] === undefined)).toEqual([]);
  });

  it("are finished, and run on any machine", () => {
    const marks = new RegExp(`\\b(${["TO", "DO"].join("")}|${["FIX", "ME"].join("")}|${["X", "XX"].join("")})\\b`);
    const machine = /(^|[\s"'`(=])\/(work|tmp|home|root|Users)\//m;
    const text = ownFiles.filter((path) => /\.(tsx?|mjs|md|ya?ml|json|css|html)$/.test(path) || path === ".ci/run");
    expect(text.filter((path) => marks.test(readText(path)))).toEqual([]);
    expect(text.filter((path) => machine.test(readText(path)))).toEqual([]);
  });
});

/**
 * Globals that would make the engine's answer depend on when and where it runs. Those of a host (process, fetch,
 * document) are unknown to the engine's compiler; these are part of the language.
 */
const impure = new Set(["Date", "Intl", "globalThis", "eval", "Function"]);

/** Uses of a global, and of chance, in a module: names that are read as values, not members or types of that name. */
function impurities({ path, source }: { path: string; source: ts.SourceFile }): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node)) return;
    if (ts.isPropertyAccessExpression(node)) {
      if (node.getText(source) === "Math.random" || node.name.text === "toLocaleString")
        found.push(node.getText(source));
      visit(node.expression);
      return;
    }
    if (ts.isIdentifier(node) && impure.has(node.text) && !isName(node)) found.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found.map((what) => `${path}: ${what}`);
}

function isName(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isBindingElement(parent)) &&
    (parent.name === node || ("propertyName" in parent && parent.propertyName === node))
  );
}

describe("code", () => {
  const program = programFiles.map((path) => ({
    path,
    source: ts.createSourceFile(path, readText(path), ts.ScriptTarget.ES2023, true),
  }));

  it("of the engine knows no clock, chance, host or place", () => {
    const engine = program.filter(({ path }) => path.startsWith("packages/engine/"));
    expect(engine.flatMap(impurities)).toEqual([]);
  });

  it("keeps no state in a module", () => {
    const kept = program.flatMap(({ path, source }) =>
      source.statements
        .filter((each) => ts.isVariableStatement(each) && (each.declarationList.flags & ts.NodeFlags.Const) === 0)
        .map((each) => `${path}: ${each.getText(source).split("\n")[0]}`),
    );
    expect(kept).toEqual([]);
  });
});

describe("dependencies", () => {
  const manifests = ["package.json", ...workspaceNames.map((name) => `packages/${name}/package.json`)];
  const dependencies = manifests.flatMap((path) => {
    const { dependencies: used = {}, devDependencies: tools = {} } = JSON.parse(readText(path));
    return Object.entries<string>({ ...used, ...tools }).map(([name, version]) => ({ path, name, version }));
  });

  it("have exact versions", () => {
    expect(dependencies.filter(({ version }) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  it("are each named in a decision", () => {
    const decisions = filesBelow("docs/decisions").map(readText).join("\n");
    const foreign = dependencies.filter(({ name }) => !name.startsWith("@oncethrough/"));
    const silent = foreign.filter(({ name }) => !decisions.includes(`\`${name}\``));
    expect(silent.map(({ name, path }) => `${name} of ${path}`)).toEqual([]);
  });
});

describe("docs/architecture", () => {
  const folders = [...new Set(programFiles.map((path) => path.split("/").slice(1, 4).join("/")))];

  it.each(["architecture.md", "architecture.svg"])("as %s names every folder of code that exists", (page) => {
    const text = readText(`docs/${page}`);
    const names = folders.map((path) => path.split("/")[2] ?? "");
    expect(names.length).toBeGreaterThan(0);
    expect(names.filter((name) => !text.includes(`\`${name}/\``) && !text.includes(`>${name}<`))).toEqual([]);
  });
});
