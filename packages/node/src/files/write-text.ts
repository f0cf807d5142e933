import { randomBytes } from "node:crypto";
import { copyFile, link, open, readdir, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { asFileProblem } from "./file-problem.ts";

/** ms; a temporary file older than this belongs to a program that no longer runs. */
const leftOver = 60 * 60 * 1000;

/**
 * Writes a text so that at every moment the whole old or the whole new text is under `path`: temporary file in the
 * same folder, flushed to the disk, then renamed. The text before stays beside it as `<name>.previous`.
 *
 * @throws FileProblem when the system refuses
 */
export async function writeTextFile(path: string, text: string): Promise<void> {
  const temporary = temporaryName(path);
  try {
    await writeFlushed(temporary, text, await modeOf(path));
    await keepPrevious(path);
    await rename(temporary, path);
    await flushFolder(dirname(path));
  } catch (error) {
    await rm(temporary, { force: true }).catch(() => undefined);
    throw asFileProblem(error, path);
  }
  await removeLeftOvers(path).catch(() => undefined);
}

/**
 * Writes a text to a file that is not there yet.
 *
 * @throws FileProblem when it is there, or the system refuses
 */
export async function writeNewTextFile(path: string, text: string): Promise<void> {
  try {
    await writeFlushed(path, text, 0o644);
  } catch (error) {
    throw asFileProblem(error, path);
  }
}

function temporaryName(path: string): string {
  return join(dirname(path), `.${basename(path)}.${randomBytes(6).toString("hex")}.tmp`);
}

async function modeOf(path: string): Promise<number> {
  try {
    return (await stat(path)).mode & 0o777;
  } catch {
    return 0o644;
  }
}

async function writeFlushed(path: string, text: string, mode: number): Promise<void> {
  const handle = await open(path, "wx", mode);
  try {
    await handle.writeFile(text, "utf8");
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** The present file gets a second name, which then takes the place of the last `.previous`. */
async function keepPrevious(path: string): Promise<void> {
  const second = temporaryName(`${path}.previous`);
  try {
    await link(path, second);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return;
    // Some file systems know no second names.
    await copyFile(path, second);
  }
  try {
    await rename(second, `${path}.previous`);
  } finally {
    // Two names of one file: renaming one onto the other leaves both.
    await rm(second, { force: true });
  }
}

/** Makes the rename itself survive a power cut; not every system lets a folder be flushed. */
async function flushFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder, "r");
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch {
    return;
  }
}

async function removeLeftOvers(path: string): Promise<void> {
  const folder = dirname(path);
  const start = `.${basename(path)}.`;
  for (const name of await readdir(folder)) {
    if (!name.startsWith(start) || !name.endsWith(".tmp")) continue;
    const about = await stat(join(folder, name));
    if (Date.now() - about.mtimeMs > leftOver) await rm(join(folder, name), { force: true });
  }
}
