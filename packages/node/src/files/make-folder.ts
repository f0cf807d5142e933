import { mkdir } from "node:fs/promises";
import { asFileProblem } from "./file-problem.ts";

/**
 * Sees to it that a folder is there.
 *
 * @throws FileProblem when it cannot be made, or a file of that name is in the way
 */
export async function makeFolder(path: string): Promise<void> {
  try {
    await mkdir(path, { recursive: true });
  } catch (error) {
    throw asFileProblem(error, path);
  }
}
