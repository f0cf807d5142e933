import { existsSync } from "node:fs";
import { join } from "node:path";
import { FileProblem } from "./file-problem.ts";
import { readTextFile } from "./read-text.ts";
import { shippedFolders } from "./shipped.ts";

/** The books of a shop, by the names of their files. */
const bookNames = ["prices", "rates", "stock"] as const;
/** One of them. */
type BookName = (typeof bookNames)[number];

/** A book's text and where it lies. */
interface BookFile {
  readonly path: string;
  readonly text: string;
}

/** The three books. */
export type BookFiles = Readonly<Record<BookName, BookFile>>;

/**
 * The shipped books, each replaced by the one of the same name in the shop's own folder.
 *
 * @throws FileProblem when a book cannot be read, or the folder holds none
 */
export async function readShopFolder(folder: string | undefined): Promise<BookFiles> {
  const own = (name: BookName) => (folder === undefined ? undefined : join(folder, `${name}.yaml`));
  const found = bookNames.filter((name) => existsSync(own(name) ?? ""));
  if (folder !== undefined && found.length === 0) {
    throw new FileProblem(folder, `${folder}: it holds none of ${bookNames.map((name) => `${name}.yaml`).join(", ")}`);
  }
  const read = async (name: BookName): Promise<BookFile> => {
    const path = found.includes(name) ? (own(name) ?? "") : join(shippedFolders.shop, `${name}.yaml`);
    return { path, text: await readTextFile(path) };
  };
  const [prices, rates, stock] = await Promise.all([read("prices"), read("rates"), read("stock")]);
  return { prices, rates, stock };
}
