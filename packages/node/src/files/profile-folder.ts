import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { asFileProblem } from "./file-problem.ts";
import { readTextFile } from "./read-text.ts";
import { shippedFolders } from "./shipped.ts";

/** A profile's text and where it lies. */
export interface ProfileText {
  readonly path: string;
  readonly text: string;
}

/**
 * The shipped owner profiles, and behind them those of a folder of the owner's own.
 *
 * @throws FileProblem when a folder or a file cannot be read
 */
export async function readProfileFolders(own: string | undefined): Promise<readonly ProfileText[]> {
  const folders = [shippedFolders.profiles, ...(own === undefined ? [] : [own])];
  return (await Promise.all(folders.map(readProfileFolder))).flat();
}

/**
 * The owner profiles of one folder.
 *
 * @throws FileProblem when the folder or a file cannot be read
 */
export async function readProfileFolder(folder: string): Promise<readonly ProfileText[]> {
  let names: string[];
  try {
    names = (await readdir(folder)).filter((name) => /\.ya?ml$/i.test(name) && !name.startsWith(".")).sort();
  } catch (error) {
    throw asFileProblem(error, folder);
  }
  return Promise.all(
    names.map(async (name) => ({ path: join(folder, name), text: await readTextFile(join(folder, name)) })),
  );
}
