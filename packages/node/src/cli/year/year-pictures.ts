import { basename, join } from "node:path";
import { yearPictures } from "@oncethrough/engine/chart/year-pictures";
import { svgText } from "@oncethrough/engine/drawing/svg-text";
import { makeFolder } from "#files/make-folder";
import { writeTextFile } from "#files/write-text";
import type { ToldYear } from "./year-output.ts";

/** pt. */
const width = 760;

/** Writes every picture of every year into a folder, which is made when it is not there; gives the names of the files. */
export async function writePictures(
  folder: string,
  told: readonly ToldYear[],
  system: "ip" | "si",
): Promise<readonly string[]> {
  await makeFolder(folder);
  const names: string[] = [];
  for (const [place, { name, year, report }] of told.entries()) {
    // Two jobs may have one name in two folders: the number keeps them apart.
    const of = told.length > 1 ? `${place + 1}-${basename(name).replace(/\.ya?ml$/, "")}-` : "";
    for (const { key, list } of yearPictures(year, report, system, width)) {
      const file = `${of}${key}.svg`;
      await writeTextFile(join(folder, file), svgText(list));
      names.push(file);
    }
  }
  return names;
}
