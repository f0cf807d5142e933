/**
 * npm start: installs and builds what is missing, solves the demo job, prints its stations and serves the page.
 *
 * Options are handed to the server: `npm start -- --no-open --port 8080`.
 */
import { join } from "node:path";
import { ensureInstalled } from "./install.mjs";
import { Complaint, runOpenly, runTool } from "./run.mjs";

const demoJob = join("examples", "marine-biology-wing.yaml");
const program = join("packages", "node", "dist", "cli", "main.js");

/**
 * @param {readonly string[]} args
 * @returns {string[]} the options for the server
 */
function readOptions(args) {
  const options = [];
  const rest = [...args];
  while (rest.length > 0) {
    const arg = rest.shift() ?? "";
    const [name, inline] = arg.split("=", 2);
    if (arg === "--no-open") options.push(arg);
    else if (name === "--port") options.push(name, readPort(inline ?? rest.shift()));
    else throw new Complaint(`npm start takes --no-open and --port N, not "${arg}".`);
  }
  return options;
}

/** @param {string | undefined} port */
function readPort(port) {
  if (port !== undefined && /^\d{1,5}$/.test(port) && Number(port) <= 65_535) return port;
  throw new Complaint(`--port takes a number from 0 to 65535, not ${port === undefined ? "nothing" : `"${port}"`}.`);
}

await runTool(async () => {
  const options = readOptions(process.argv.slice(2));
  await ensureInstalled();
  const { build } = await import("./build.mjs");
  console.log("building …");
  await build();
  const rated = await runOpenly(process.execPath, [program, "rate", demoJob]);
  if (rated !== 0) throw new Complaint(`the demo job ${demoJob} did not solve.`);
  console.log("");
  return runOpenly(process.execPath, [program, "serve", demoJob, ...options]);
});
