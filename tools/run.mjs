/** Running other programs: quietly, keeping what they say, or in the open. Node alone, so that it works before installing. */
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const projectRoot = dirname(dirname(fileURLToPath(import.meta.url)));

/** A mistake that a person can mend: printed as one line, without a stack. */
export class Complaint extends Error {}

/**
 * @typedef {{ env?: Record<string, string | undefined>, shell?: boolean }} RunOptions
 * @typedef {{ code: number, output: string }} Outcome
 */

/**
 * Runs a program and keeps its output.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<Outcome>}
 */
export function runQuietly(command, args, options = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: projectRoot,
      env: { ...process.env, ...options.env },
      shell: options.shell ?? false,
      stdio: ["ignore", "pipe", "pipe"],
    });
    /** @type {Buffer[]} */
    const chunks = [];
    child.stdout.on("data", (chunk) => chunks.push(chunk));
    child.stderr.on("data", (chunk) => chunks.push(chunk));
    child.on("error", (error) => resolve({ code: 1, output: error.message }));
    child.on("close", (code) => resolve({ code: code ?? 1, output: Buffer.concat(chunks).toString("utf8").trimEnd() }));
  });
}

/**
 * Runs a program on the person's own screen. An interrupt (Ctrl-C) reaches it and counts as its clean end.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<number>} its exit code
 */
export function runOpenly(command, args, options = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: projectRoot,
      env: { ...process.env, ...options.env },
      shell: options.shell ?? false,
      stdio: "inherit",
    });
    let interrupted = false;
    /** @param {NodeJS.Signals} signal */
    const passOn = (signal) => {
      // A terminal sends Ctrl-C to the child as well; a lone signal to this process has to be handed on.
      if (signal === "SIGTERM" || !process.stdin.isTTY) child.kill(signal);
      interrupted = true;
    };
    process.on("SIGINT", passOn);
    process.on("SIGTERM", passOn);
    /** @param {number} code */
    const finish = (code) => {
      process.off("SIGINT", passOn);
      process.off("SIGTERM", passOn);
      resolve(interrupted ? 0 : code);
    };
    child.on("error", (error) => {
      console.error(error.message);
      finish(1);
    });
    child.on("exit", (code) => finish(code ?? 1));
  });
}

/**
 * The script behind a command of an installed package, so that it runs without a shell on every system.
 *
 * @param {string} packageName
 * @param {string} [command]
 */
export function commandScript(packageName, command = packageName) {
  const folder = join(projectRoot, "node_modules", packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  return join(folder, typeof bin === "string" ? bin : bin[command]);
}

/**
 * Runs a tool to its end; a complaint ends as one line and code 1, without a stack.
 *
 * @param {() => Promise<number | undefined> | number | undefined} work gives the exit code, 0 when it gives nothing
 */
export async function runTool(work) {
  try {
    process.exitCode = (await work()) ?? 0;
  } catch (error) {
    if (!(error instanceof Complaint)) throw error;
    console.error(error.message);
    process.exitCode = 1;
  }
}
