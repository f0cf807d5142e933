/**
 * npm run generate: writes every file that is made from the code. `-- --check` writes nothing and fails on a difference.
 * A generator gives the file's whole text; add one to the list with the file it makes.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { arrowsPage } from "./arrows-page.mjs";
import { Complaint, projectRoot, runTool } from "./run.mjs";

/** @type {readonly { file: string, make: () => string | Promise<string> }[]} */
const generators = [{ file: "docs/arrows.md", make: arrowsPage }];

await runTool(async () => {
  const [option, ...more] = process.argv.slice(2);
  if ((option !== undefined && option !== "--check") || more.length > 0)
    throw new Complaint("npm run generate takes --check or nothing.");
  const stale = [];
  for (const { file, make } of generators) {
    const path = join(projectRoot, file);
    const text = await make();
    if (existsSync(path) && readFileSync(path, "utf8") === text) continue;
    stale.push(file);
    if (option === undefined) writeFileSync(path, text);
  }
  if (option === undefined) console.log(stale.length === 0 ? "nothing to write" : `wrote ${stale.join(", ")}`);
  else if (stale.length > 0)
    throw new Complaint(`out of date: ${stale.join(", ")}; run npm run generate and commit it.`);
});
