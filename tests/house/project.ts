import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's root folder. */
export const root = fileURLToPath(new URL("../..", import.meta.url));

/** Paths of the files below a folder of the project, with `/` between names, sorted; built and installed files left out. */
export function filesBelow(folder: string): string[] {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { withFileTypes: true })
    .flatMap((entry) => {
      const path = `${folder}/${entry.name}`;
      if (!entry.isDirectory()) return [path];
      return entry.name === "node_modules" || entry.name === "dist" ? [] : filesBelow(path);
    })
    .sort();
}

/** The text of a file of the project. */
export function readText(path: string): string {
  return readFileSync(join(root, path), "utf8");
}

/** Names of the workspaces that exist. */
export const workspaceNames = ["engine", "documents", "node", "web"].filter((name) =>
  existsSync(join(root, "packages", name, "src")),
);

/** TypeScript of the program: no tests, no data of tests. */
export const programFiles = workspaceNames
  .flatMap((name) => filesBelow(`packages/${name}/src`))
  .filter((path) => /\.tsx?$/.test(path) && !/\.(test|test-data)\.tsx?$/.test(path));

/** Keys of reference/bibliography.json. */
export const bibliographyKeys: ReadonlySet<string> = new Set(
  Object.keys(JSON.parse(readText("reference/bibliography.json"))),
);
