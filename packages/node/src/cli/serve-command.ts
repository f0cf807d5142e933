import { readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import { openJobFolder } from "#files/job-folder";
import { readProfileFolder } from "#files/profile-folder";
import { readCatalogueFolder, shippedFolders, siteIsBuilt } from "#files/shipped";
import { readShopFolder } from "#files/shop-folder";
import { openBrowser, serve } from "#server/serve";
import { exitCode, UsageProblem } from "./exit-code.ts";
import { textInk } from "./ink.ts";
import { hasErrors, problemLine } from "./job-source.ts";
import { type Given, optionText, type Streams } from "./session.ts";

/** `oncethrough serve`: serves the page until the program is asked to end. */
export async function serveCommand(given: Given, streams: Streams): Promise<number> {
  const port = readPort(optionText(given, "port") ?? "");
  const shopFolder = optionText(given, "catalogue");
  const shopCatalogue = shopFolder === undefined ? [] : await readCatalogueFolder(shopFolder);
  const shopBooks = await readShopFolder(optionText(given, "shop"));
  const profileFolder = optionText(given, "profiles");
  const ownProfiles = profileFolder === undefined ? [] : await readProfileFolder(profileFolder);
  const { problems } = readProfiles(ownProfiles, rules);
  for (const each of problems) streams.errors(problemLine(each, textInk(streams.colour)));
  if (hasErrors(problems)) return exitCode.found;
  const { folder, job } = await openJobFolder(given.operands[0] ?? shippedFolders.examples);
  const startJob = job ?? (await folder.list())[0]?.name;
  const siteFolder = shippedFolders.site;
  const serving = await serve({ folder, startJob, shopCatalogue, shopBooks, ownProfiles, siteFolder, port });
  const stop = streams.untilInterrupted();
  if (!siteIsBuilt()) streams.errors("the page is not built yet: npm run build\n");
  streams.output(`${serving.address}\n`);
  streams.output(`jobs in ${folder.path}; end with Ctrl-C\n`);
  if (given.options.open !== false && streams.terminal) openBrowser(serving.address);
  await stop;
  await serving.close();
  return exitCode.fine;
}

function readPort(typed: string): number {
  if (/^\d{1,5}$/.test(typed) && Number(typed) <= 65_535) return Number(typed);
  throw new UsageProblem(`--port "${typed}" is not a port; allowed: 0 to 65535, 0 for any free one`);
}
