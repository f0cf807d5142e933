/** The browser that the page's tests run in: the system's own Chromium, installed by the system's own means. */
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { Complaint, runQuietly } from "./run.mjs";

const usualPlaces = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/snap/bin/chromium",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

const commandNames = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/**
 * @returns {string | undefined} the path of a Chromium: ONCETHROUGH_BROWSER where it is set, else one found
 * @throws {Complaint} when ONCETHROUGH_BROWSER names no program
 */
export function findBrowser() {
  const named = process.env.ONCETHROUGH_BROWSER;
  if (named !== undefined && named !== "") {
    if (isProgram(named)) return named;
    throw new Complaint(`ONCETHROUGH_BROWSER names "${named}", which is no program that can be run.`);
  }
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => commandNames.map((name) => join(folder, name)));
  return [...usualPlaces, ...onPath].find(isProgram);
}

/**
 * Finds the browser; as root on a Debian-like system it installs one first where there is none.
 *
 * @returns {Promise<string>}
 * @throws {Complaint} that says what to install
 */
export async function ensureBrowser() {
  const found = findBrowser();
  if (found !== undefined) return found;
  const isRoot = process.getuid?.() === 0;
  if (!isRoot || !existsSync("/usr/bin/apt-get"))
    throw new Complaint(
      "The browser tests need Chromium: install it (Debian or Ubuntu: sudo apt-get install chromium) or set ONCETHROUGH_BROWSER to the path of one.",
    );
  console.log("installing Chromium by apt-get …");
  const env = { DEBIAN_FRONTEND: "noninteractive" };
  for (const args of [["update"], ["install", "-y", "--no-install-recommends", "chromium"]]) {
    const { code, output } = await runQuietly("apt-get", args, { env });
    if (code !== 0) throw new Complaint(`apt-get ${args.join(" ")} failed:\n${output}`);
  }
  const installed = findBrowser();
  if (installed === undefined) throw new Complaint("apt-get installed chromium, but no browser was found after it.");
  return installed;
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
