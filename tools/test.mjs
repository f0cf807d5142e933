/**
 * npm test: installs what is missing, builds, checks the house and runs every test.
 * The last line is `N passed, N failed`: vitest's tests, with each failed check counted as one failure.
 */
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { ensureBrowser } from "./browser.mjs";
import { ensureInstalled } from "./install.mjs";
import { Complaint, commandScript, projectRoot, runOpenly, runQuietly, runTool } from "./run.mjs";

/** @typedef {{ passed: number, failed: number, skipped: number }} Count */

/** @returns {Record<string, () => Promise<import("./run.mjs").Outcome>>} */
function houseChecks() {
  /** @param {readonly string[]} args */
  const node = (args) => () => runQuietly(process.execPath, args);
  const colours = process.stdout.isTTY ? ["--colors=force"] : ["--colors=off"];
  return {
    "format and lint": node([commandScript("@biomejs/biome", "biome"), "ci", "--max-diagnostics=50", ...colours, "."]),
    structure: node([join("tools", "structure.mjs")]),
    "unused exports": node([commandScript("knip"), "--no-progress"]),
    "generated files": node([join("tools", "generate.mjs"), "--check"]),
  };
}

/**
 * Runs one check, says how it went and shows its words when it failed.
 *
 * @param {string} name
 * @param {() => Promise<import("./run.mjs").Outcome>} check
 * @returns {Promise<boolean>}
 */
async function runCheck(name, check) {
  const start = Date.now();
  const { code, output } = await check();
  const seconds = ((Date.now() - start) / 1000).toFixed(1);
  const lastLine = output.split("\n").at(-1) ?? "";
  const remark = name === "structure" && code === 0 ? `: ${lastLine}` : "";
  console.log(`${code === 0 ? "ok  " : "FAIL"}  ${name} (${seconds} s)${remark}`);
  if (code !== 0) console.log(`${output}\n`);
  return code === 0;
}

/** Builds and types the tests on one core while the house is checked on the other. */
async function runChecks() {
  const { build } = await import("./build.mjs");
  const buildLane = async () => {
    const built = await runCheck("build", () =>
      build().then(
        () => ({ code: 0, output: "" }),
        (error) => ({ code: 1, output: error instanceof Complaint ? error.message : String(error.stack) }),
      ),
    );
    const tsc = commandScript("typescript", "tsc");
    const typed = await runCheck("types of the tests", () =>
      runQuietly(process.execPath, [tsc, "-p", "tools", "--pretty", "false"]),
    );
    return [built, typed];
  };
  const checkLane = async () => {
    const results = [];
    for (const [name, check] of Object.entries(houseChecks())) results.push(await runCheck(name, check));
    return results;
  };
  const results = await Promise.all([buildLane(), checkLane()]);
  return results.flat().filter((good) => !good).length;
}

/**
 * @param {string} browser
 * @returns {Promise<Count>}
 */
async function runTests(browser) {
  const folder = join("node_modules", ".cache", "oncethrough");
  const report = join(projectRoot, folder, "tests.json");
  mkdirSync(join(projectRoot, folder), { recursive: true });
  rmSync(report, { force: true });
  const code = await runOpenly(
    process.execPath,
    [commandScript("vitest"), "run", "--reporter=default", "--reporter=json", `--outputFile.json=${report}`],
    { env: { ONCETHROUGH_BROWSER: browser } },
  );
  if (!existsSync(report)) {
    console.log("vitest wrote no report of its tests.");
    return { passed: 0, failed: 1, skipped: 0 };
  }
  return countTests(JSON.parse(readFileSync(report, "utf8")), code);
}

/**
 * Counts tests; a file that could not be run, and a run that failed outside its tests, count as one failure each.
 *
 * @param {{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number,
 *   testResults: { status: string, assertionResults: unknown[] }[] }} report
 * @param {number} code with which vitest ended
 * @returns {Count}
 */
export function countTests(report, code) {
  const brokenFiles = report.testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.length === 0,
  );
  let failed = report.numFailedTests + brokenFiles.length;
  const skipped = report.numPendingTests + report.numTodoTests;
  if (failed === 0 && (code !== 0 || report.numPassedTests === 0)) failed = 1;
  return { passed: report.numPassedTests, failed, skipped };
}

/** @param {Count} count */
export function closingLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`;
}

/** @returns {Promise<Count>} */
async function runAll() {
  let browser = "";
  try {
    await ensureInstalled();
    browser = await ensureBrowser();
  } catch (error) {
    if (!(error instanceof Complaint)) throw error;
    console.log(error.message);
    return { passed: 0, failed: 1, skipped: 0 };
  }
  const failedChecks = await runChecks();
  const tests = await runTests(browser);
  return { ...tests, failed: tests.failed + failedChecks };
}

if (process.argv[1]?.endsWith("test.mjs"))
  await runTool(async () => {
    const count = await runAll();
    console.log(closingLine(count));
    return count.failed > 0 || count.passed === 0 ? 1 : 0;
  });
