/** Makes sure that what package-lock.json names is installed, and that Node is new enough to run it. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Complaint, projectRoot, runQuietly } from "./run.mjs";

const oldestNode = [20, 19];

/**
 * Installs when node_modules is missing or differs from the lockfile.
 *
 * @returns {Promise<boolean>} whether it had to install
 */
export async function ensureInstalled() {
  checkNode(process.versions.node);
  if (isInstalled(projectRoot)) return false;
  console.log("installing the packages of package-lock.json …");
  const args = ["ci", "--no-audit", "--no-fund", "--loglevel=error"];
  const npm = process.env.npm_execpath;
  const viaNode = npm !== undefined && /\.c?js$/.test(npm);
  const { code, output } = viaNode
    ? await runQuietly(process.execPath, [npm, ...args])
    : await runQuietly("npm", args, { shell: process.platform === "win32" });
  if (code !== 0) throw new Complaint(`npm ci failed:\n${output}`);
  return true;
}

/**
 * @param {string} version
 * @throws {Complaint} when Node is older than the project needs
 */
function checkNode(version) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = oldestNode;
  if (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor)) return;
  throw new Complaint(`Node ${oldestNode.join(".")} or newer is needed; this is ${version}.`);
}

/**
 * Whether every package that the lockfile requires lies in node_modules in the version it names. npm writes what it
 * installed to node_modules/.package-lock.json once it is done, so a broken-off installation does not count.
 *
 * @param {string} root
 */
function isInstalled(root) {
  const installed = join(root, "node_modules", ".package-lock.json");
  if (!existsSync(installed)) return false;
  const wanted = readPackages(join(root, "package-lock.json"));
  const present = readPackages(installed);
  return Object.entries(wanted).every(([path, entry]) => {
    if (
      !path.startsWith("node_modules/") ||
      entry.optional === true ||
      entry.devOptional === true ||
      entry.peer === true
    )
      return true;
    return present[path]?.version === entry.version;
  });
}

/**
 * @param {string} file
 * @returns {Record<string, { version?: string, optional?: boolean, devOptional?: boolean, peer?: boolean }>}
 */
function readPackages(file) {
  return JSON.parse(readFileSync(file, "utf8")).packages ?? {};
}
