/** A file cannot be used: the message is one clear line that names the file and what is the matter. */
export class FileProblem extends Error {
  readonly path: string;
  constructor(path: string, message: string) {
    super(message);
    this.name = "FileProblem";
    this.path = path;
  }
}

const words: Record<string, string> = {
  ENOENT: "there is no such file",
  EEXIST: "it is there already, and nothing is written over it; give another name",
  ENOTDIR: "a part of the path is a file, not a folder",
  EISDIR: "it is a folder, not a file",
  EACCES: "permission is denied",
  EPERM: "the system does not permit it",
  EROFS: "the disk can only be read",
  ENOSPC: "the disk is full",
  EDQUOT: "the disk quota is used up",
  EMFILE: "too many files are open",
  ELOOP: "its links go round in a circle, or it is a link that may not be followed",
  ENAMETOOLONG: "the name is too long",
  EIO: "the disk reports an error",
};

/** The problem of a system call on `path` in words; errors that are no system errors stay what they are. */
export function asFileProblem(error: unknown, path: string): unknown {
  if (error instanceof FileProblem || !(error instanceof Error)) return error;
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined) return error;
  return new FileProblem(path, `${path}: ${words[code] ?? `the system says ${code}`}`);
}
