import { existsSync } from "node:fs";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { asFileProblem, FileProblem } from "./file-problem.ts";
import { readTextFile } from "./read-text.ts";

/** The project's own folder: four floors above this file, in the sources and in the build alike. */
const projectFolder = fileURLToPath(new URL("../../../../", import.meta.url));

/** The folders that come with the program. */
export const shippedFolders = {
  catalogue: join(projectFolder, "catalogue"),
  examples: join(projectFolder, "examples"),
  profiles: join(projectFolder, "profiles"),
  shop: join(projectFolder, "shop"),
  site: join(projectFolder, "packages", "web", "dist", "site"),
} as const;

/** True when the page has been built. */
export function siteIsBuilt(): boolean {
  return existsSync(join(shippedFolders.site, "index.html"));
}

/** A catalogue file: where it lies, for messages, and its text. */
export interface CatalogueText {
  readonly path: string;
  readonly text: string;
}

/**
 * Every catalogue file of `folder`, by name.
 *
 * @throws FileProblem when the folder cannot be read or holds no catalogue file
 */
export async function readCatalogueFolder(folder: string): Promise<readonly CatalogueText[]> {
  let names: string[];
  try {
    names = (await readdir(folder)).filter((name) => /\.ya?ml$/i.test(name) && !name.startsWith(".")).sort();
  } catch (error) {
    throw catalogueProblem(error, folder);
  }
  if (names.length === 0) throw new FileProblem(folder, `${folder}: it holds no catalogue file (.yaml)`);
  return Promise.all(names.map(async (name) => ({ path: name, text: await readTextFile(join(folder, name)) })));
}

function catalogueProblem(error: unknown, folder: string): unknown {
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
  if (code === "ENOENT") return new FileProblem(folder, `${folder}: there is no such folder`);
  if (code === "ENOTDIR") return new FileProblem(folder, `${folder}: it is a file, not a folder`);
  return asFileProblem(error, folder);
}
