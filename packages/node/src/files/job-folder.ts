import { createHash } from "node:crypto";
import { lstat, readdir, realpath, stat } from "node:fs/promises";
import { basename, dirname, join, resolve, sep } from "node:path";
import { asFileProblem, FileProblem } from "./file-problem.ts";
import { readTextFile } from "./read-text.ts";
import { writeTextFile } from "./write-text.ts";

/** A job file as it lies in the folder. */
export interface JobText {
  readonly name: string;
  readonly text: string;
  /** Changes with every change of the text. */
  readonly version: string;
}

/** A line of the folder's list. */
export interface JobEntry {
  readonly name: string;
  /** Bytes. */
  readonly size: number;
  /** Time of the last change, ISO 8601. */
  readonly changed: string;
}

/** Outcome of a save: the new version, or the text that stands on the disk instead of the expected one. */
export type SaveOutcome =
  | { readonly saved: true; readonly version: string }
  | { readonly saved: false; readonly version: string; readonly text: string };

/** The folder that a person chose to work in; nothing outside it is read or written. */
export interface JobFolder {
  readonly path: string;
  readonly list: () => Promise<readonly JobEntry[]>;
  readonly read: (name: string) => Promise<JobText>;
  /** Writes `text` when the file still has `version`, or when `version` is undefined and there is no file yet. */
  readonly save: (name: string, text: string, version: string | undefined) => Promise<SaveOutcome>;
}

/** A name that no job can have, or a way out of the folder. */
export class NameProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = "NameProblem";
  }
}

/** The version of a text. */
export function versionOfText(text: string): string {
  return createHash("sha256").update(text, "utf8").digest("base64url").slice(0, 22);
}

/**
 * The folder at `path`; a file stands for its folder.
 *
 * @throws FileProblem when there is none
 */
export async function openJobFolder(path: string): Promise<{ folder: JobFolder; job: string | undefined }> {
  try {
    const real = await realpath(resolve(path));
    const isFolder = (await stat(real)).isDirectory();
    const root = isFolder ? real : dirname(real);
    const job = isFolder ? undefined : basename(real);
    if (job !== undefined) checkJobName(job);
    return { folder: jobFolder(root), job };
  } catch (error) {
    if (error instanceof NameProblem) throw new FileProblem(path, `${path}: ${error.message}`);
    throw asFileProblem(error, path);
  }
}

function jobFolder(root: string): JobFolder {
  // One save after the other: between comparing the version and renaming, no second save may slip in.
  let lastSave: Promise<unknown> = Promise.resolve();
  return {
    path: root,
    list: () => listJobs(root),
    read: (name) => readJobText(root, name),
    save: (name, text, version) => {
      const save = lastSave.then(() => saveJobText(root, name, text, version));
      lastSave = save.catch(() => undefined);
      return save;
    },
  };
}

/** @throws NameProblem */
function checkJobName(name: string): void {
  if (!/\.ya?ml$/i.test(name)) throw new NameProblem("a job file ends in .yaml or .yml");
  if (name.length > 200) throw new NameProblem("the name is longer than 200 characters");
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is refused
  if (/[\\/:*?"<>|\u0000-\u001f\u007f]/.test(name) || name.startsWith(".")) {
    throw new NameProblem("a job name is a plain file name in the chosen folder, without a path");
  }
}

/** The true place of a job inside `root`, undefined when there is no such file. */
async function placeOf(root: string, name: string): Promise<string | undefined> {
  checkJobName(name);
  const path = join(root, name);
  try {
    await lstat(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw asFileProblem(error, path);
  }
  let real: string;
  try {
    real = await realpath(path);
  } catch (error) {
    throw asFileProblem(error, name);
  }
  if (!real.startsWith(root.endsWith(sep) ? root : root + sep)) {
    throw new NameProblem(`${name} is a link that leads out of the chosen folder`);
  }
  return real;
}

async function readJobText(root: string, name: string): Promise<JobText> {
  const place = await placeOf(root, name);
  if (place === undefined) throw new FileProblem(name, `${name}: there is no such file`);
  const text = await readTextFile(place, { refuseLink: true });
  return { name, text, version: versionOfText(text) };
}

async function saveJobText(
  root: string,
  name: string,
  text: string,
  version: string | undefined,
): Promise<SaveOutcome> {
  const place = await placeOf(root, name);
  const present = place === undefined ? undefined : await textOnDisk(place);
  const presentVersion = present === undefined ? undefined : versionOfText(present);
  // What is there already needs no writing: a save whose answer was lost may be sent again.
  if (present === text) return { saved: true, version: versionOfText(text) };
  if (present !== undefined && presentVersion !== version) {
    return { saved: false, version: presentVersion ?? "", text: present };
  }
  if (present === undefined && version !== undefined) {
    // The file was removed behind the page's back: nothing is overwritten by writing it anew, but the page must know.
    return { saved: false, version: "", text: "" };
  }
  await writeTextFile(place ?? join(root, name), text);
  return { saved: true, version: versionOfText(text) };
}

/** An emptied file counts as text too: it may be written over when the page knows of it. */
async function textOnDisk(place: string): Promise<string> {
  try {
    return await readTextFile(place, { refuseLink: true });
  } catch (error) {
    if (error instanceof FileProblem && error.message.endsWith("it is empty")) return "";
    throw error;
  }
}

async function listJobs(root: string): Promise<readonly JobEntry[]> {
  const entries: JobEntry[] = [];
  let names: string[];
  try {
    names = await readdir(root);
  } catch (error) {
    throw asFileProblem(error, root);
  }
  for (const name of names.sort((one, other) => one.localeCompare(other, "en"))) {
    try {
      const place = await placeOf(root, name);
      if (place === undefined) continue;
      const about = await stat(place);
      if (about.isFile()) entries.push({ name, size: about.size, changed: about.mtime.toISOString() });
    } catch (error) {
      if (error instanceof NameProblem || error instanceof FileProblem) continue;
      throw error;
    }
  }
  return entries;
}
