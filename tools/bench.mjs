/**
 * npm run bench: runs every packages/<name>/bench/<suite>.bench.ts, prints its figures and the machine,
 * and last, as the suite `web-page`, the page in a browser (see page-bench.mjs).
 * `npm run bench -- --json` prints JSON alone; other words choose the suites whose path holds one of them.
 *
 * A suite is `export const suite = { title, tasks: [{ name, operations?, run, compare? }] }`: `run` does `operations`
 * operations (1 when not said), `compare` names the task of the same suite that this one is set against. A suite of long
 * tasks says how many `samples` of each are enough.
 */
import { existsSync, readdirSync } from "node:fs";
import { cpus } from "node:os";
import { basename, dirname, join } from "node:path";
import { Bench } from "tinybench";
import { Complaint, projectRoot, runTool } from "./run.mjs";
import { importSources } from "./sources.mjs";

/**
 * @typedef {{ name: string, operations?: number, run: () => void, compare?: string }} Task
 * @typedef {{ title: string, samples?: number, tasks: readonly Task[] }} Suite
 * @typedef {{ name: string, nanosecondsPerOperation: number, spread: number, bestNanoseconds: number, operationsPerSecond: number, samples: number,
 *   compare?: string, ratio?: number }} Figure
 */

function findSuites() {
  const packages = join(projectRoot, "packages");
  return readdirSync(packages)
    .flatMap((name) => {
      const folder = join("packages", name, "bench");
      return existsSync(join(projectRoot, folder))
        ? readdirSync(join(projectRoot, folder))
            .filter((file) => file.endsWith(".bench.ts"))
            .map((file) => join(folder, file))
        : [];
    })
    .sort();
}

/**
 * @param {string} file packages/engine/bench/fluid.bench.ts
 * @returns {string} engine-fluid
 */
function suiteName(file) {
  return `${basename(dirname(dirname(file)))}-${basename(file, ".bench.ts")}`;
}

/**
 * @param {Suite} suite
 * @returns {Promise<Figure[]>}
 */
async function runSuite(suite) {
  const few =
    suite.samples === undefined ? {} : { iterations: suite.samples, warmupIterations: 1, time: 0, warmupTime: 0 };
  const bench = new Bench({ time: 400, warmupTime: 100, throws: true, ...few });
  for (const task of suite.tasks) bench.add(task.name, task.run);
  await bench.run();
  const figures = suite.tasks.map((task) => figureOf(task, bench));
  for (const figure of figures) {
    const other = figures.find((each) => each.name === figure.compare);
    if (figure.compare !== undefined && other === undefined)
      throw new Complaint(
        `${suite.title}: "${figure.name}" is set against "${figure.compare}", which is no task of it.`,
      );
    if (other !== undefined) figure.ratio = other.nanosecondsPerOperation / figure.nanosecondsPerOperation;
  }
  return figures;
}

/**
 * @param {Task} task
 * @param {Bench} bench
 * @returns {Figure}
 */
function figureOf(task, bench) {
  const result = /** @type {any} */ (bench.tasks.find((each) => each.name === task.name)?.result);
  if (result?.latency === undefined) throw new Complaint(`the benchmark "${task.name}" gave no figures.`);
  const { min, p50, p75, samplesCount } = result.latency;
  const nanoseconds = (p50 * 1e6) / (task.operations ?? 1);
  return {
    name: task.name,
    nanosecondsPerOperation: nanoseconds,
    // Distance from the median to the upper quartile: what a second run may well differ by.
    spread: p50 > 0 ? (p75 - p50) / p50 : 0,
    // What it takes when nothing else is at work on the machine.
    bestNanoseconds: (min * 1e6) / (task.operations ?? 1),
    operationsPerSecond: 1e9 / nanoseconds,
    samples: samplesCount,
    ...(task.compare === undefined ? {} : { compare: task.compare }),
  };
}

function machine() {
  const processors = cpus();
  return {
    processor: processors[0]?.model.trim() ?? "unknown",
    cores: processors.length,
    node: process.versions.node,
    system: `${process.platform} ${process.arch}`,
  };
}

/** @param {number} nanoseconds */
function printTime(nanoseconds) {
  const [size, unit] =
    nanoseconds < 1e3 ? [1, "ns"] : nanoseconds < 1e6 ? [1e3, "µs"] : nanoseconds < 1e9 ? [1e6, "ms"] : [1e9, "s"];
  return `${Number((nanoseconds / size).toPrecision(4))} ${unit}`;
}

/** @param {Figure[]} figures */
function printFigures(figures) {
  const width = Math.max(...figures.map((figure) => figure.name.length));
  for (const figure of figures) {
    const spread = `±${(figure.spread * 100).toFixed(0)} %`;
    const rate = `${Math.round(figure.operationsPerSecond).toLocaleString("en")} per second`;
    const ratio = figure.ratio === undefined ? "" : `   ${figure.ratio.toFixed(1)} times ${figure.compare}`;
    const time = printTime(figure.nanosecondsPerOperation).padStart(10);
    const best = printTime(figure.bestNanoseconds).padStart(10);
    console.log(`  ${figure.name.padEnd(width)} ${time} ${spread.padStart(6)} ${best} ${rate.padStart(24)}${ratio}`);
  }
}

/** The page in a browser, beside the suites of the engine. */
const pageSuite = "web-page";

await runTool(async () => {
  const args = process.argv.slice(2);
  const json = args.includes("--json");
  const words = args.filter((arg) => arg !== "--json");
  const unknown = words.find((word) => word.startsWith("-"));
  if (unknown !== undefined)
    throw new Complaint(`npm run bench takes --json and words of suite names, not "${unknown}".`);
  const files = findSuites().filter((file) => words.length === 0 || words.some((word) => file.includes(word)));
  const withPage = words.length === 0 || words.some((word) => pageSuite.includes(word));
  if (files.length === 0 && !withPage) throw new Complaint("no benchmark suite was found.");
  const entries = Object.fromEntries(files.map((file) => [suiteName(file), file]));
  const modules = files.length === 0 ? {} : await importSources("bench", entries);
  if (!json) {
    const { processor, cores, node, system } = machine();
    console.log(`${processor}, ${cores} cores, Node ${node}, ${system}`);
    console.log("time per operation: median, distance to the upper quartile, best, operations per second");
  }
  /** @type {object[]} */
  const results = [];
  for (const [name, { suite }] of Object.entries(modules)) {
    if (!json) console.log(`\n${suite.title}`);
    const figures = await runSuite(suite);
    if (!json) printFigures(figures);
    results.push({ suite: name, title: suite.title, figures });
  }
  if (withPage) {
    const { measurePage, printPage, pageTitle } = await import("./page-bench.mjs");
    if (!json) console.log(`\n${pageTitle}`);
    const figures = await measurePage();
    if (json) results.push({ suite: pageSuite, title: pageTitle, figures });
    else printPage(figures);
  }
  if (json) console.log(JSON.stringify({ machine: machine(), suites: results }, undefined, 2));
});
