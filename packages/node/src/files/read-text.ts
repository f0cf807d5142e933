import { constants } from "node:fs";
import { type FileHandle, open } from "node:fs/promises";
import { asFileProblem, FileProblem } from "./file-problem.ts";

/** Bytes; a job is a few kilobytes, a year of hourly air states as CSV under two megabytes. */
export const largestText = 4 * 1024 * 1024;

/** How a text may be read. */
export interface TextLimits {
  /** Bytes taken at most. */
  readonly most?: number;
  /** Refuse a path whose last part is a link. */
  readonly refuseLink?: boolean;
  /** Take bytes that are no UTF-8 for the Latin script of old systems; weather files name their places so. */
  readonly orLatin?: boolean;
}

/**
 * The text of a file, as UTF-8, every byte kept.
 *
 * @throws FileProblem when it is missing, a folder, not permitted, empty, binary, not UTF-8 or too large
 */
export async function readTextFile(path: string, limits: TextLimits = {}): Promise<string> {
  const most = limits.most ?? largestText;
  try {
    const flags = constants.O_RDONLY | (limits.refuseLink === true ? (constants.O_NOFOLLOW ?? 0) : 0);
    const handle = await open(path, flags);
    try {
      const about = await handle.stat();
      if (about.isDirectory()) throw new FileProblem(path, `${path}: it is a folder, not a file`);
      return decodeText(path, await readBytes(handle, path, most), limits.orLatin === true);
    } finally {
      await handle.close();
    }
  } catch (error) {
    throw asFileProblem(error, path);
  }
}

/**
 * The text of a stream, such as standard input; `name` is what errors call it.
 *
 * @throws FileProblem as `readTextFile` does
 */
export async function readTextStream(
  stream: AsyncIterable<Uint8Array | string>,
  name: string,
  most = largestText,
): Promise<string> {
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of stream) {
    const bytes = typeof piece === "string" ? Buffer.from(piece, "utf8") : piece;
    size += bytes.length;
    if (size > most) throw tooLarge(name, most);
    pieces.push(bytes);
  }
  return decodeText(name, Buffer.concat(pieces));
}

/** Reads until the end or one byte beyond the limit: sizes that devices and pipes state are not to be trusted. */
async function readBytes(handle: FileHandle, path: string, most: number): Promise<Buffer> {
  const pieces: Buffer[] = [];
  let size = 0;
  for (;;) {
    const piece = Buffer.alloc(64 * 1024);
    const { bytesRead } = await handle.read(piece, 0, piece.length, null);
    if (bytesRead === 0) return Buffer.concat(pieces);
    size += bytesRead;
    if (size > most) throw tooLarge(path, most);
    pieces.push(piece.subarray(0, bytesRead));
  }
}

function tooLarge(path: string, most: number): FileProblem {
  return new FileProblem(path, `${path}: it is larger than the ${megabytes(most)} that are taken`);
}

function megabytes(bytes: number): string {
  return bytes >= 1024 * 1024 ? `${+(bytes / 1024 / 1024).toFixed(1)} MB` : `${bytes} bytes`;
}

function decodeText(path: string, bytes: Uint8Array, orLatin = false): string {
  if (bytes.includes(0)) throw new FileProblem(path, `${path}: it is not a text file (it holds zero bytes)`);
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    if (!orLatin) throw new FileProblem(path, `${path}: it is not a text file in UTF-8`);
    text = new TextDecoder("latin1").decode(bytes);
  }
  if (/^\uFEFF?\s*$/.test(text)) throw new FileProblem(path, `${path}: it is empty`);
  return text;
}
