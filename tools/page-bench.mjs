/**
 * The page in a real browser, its thread throttled fourfold, on the largest example: how long from an edit until airway,
 * profiles, chart, findings and price are redrawn, and how many frames a second there are while hours are scrubbed.
 */
import { spawn } from "node:child_process";
import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { ensureBrowser } from "./browser.mjs";
import { build } from "./build.mjs";
import { installWatch, scrubHours } from "./page-watch.mjs";
import { Complaint, projectRoot } from "./run.mjs";

export const pageTitle =
  "the page in a browser, its thread throttled fourfold (workers are not: browsers throttle the page's thread alone)";

const job = "large-vivarium.yaml";
const throttling = 4;
const rounds = 8;
const scrubSeconds = 4;

/** What a hand changes, there and back: the section's name, the field, two values. */
const edits = [
  ["cooling coil", "rows", "10", "8"],
  ["cooling coil", "fins", "11 per in", "10 per in"],
  ["filter access", "length", "34 in", "30 in"],
  ["prefilters", "length", "33 in", "30 in"],
];

/** The parts of the page that an edit redraws. */
const regions = /** @type {const} */ (["airway", "chart", "findings", "price"]);

/**
 * @typedef {Record<(typeof regions)[number] | "all", number>} Redrawn ms from the key to the frame that shows each
 * @typedef {{ edits: Redrawn[], framesPerSecond: number, longestFrame: number }} PageFigures
 */

/** @returns {Promise<PageFigures>} */
export async function measurePage() {
  await build();
  const executablePath = await ensureBrowser();
  const folder = mkdtempSync(join(tmpdir(), "oncethrough-bench-"));
  copyFileSync(join(projectRoot, "examples", job), join(folder, job));
  const server = await startServer(join(folder, job));
  const browser = await chromium.launch({ executablePath, args: ["--headless", "--no-sandbox"] });
  try {
    // Edits move softly where motion is wanted; that movement is no part of what is measured.
    const context = await browser.newContext({ viewport: { width: 1680, height: 1050 }, reducedMotion: "reduce" });
    const page = await context.newPage();
    await page.goto(server.address);
    await page.getByRole("listbox", { name: "sections in airflow order" }).waitFor();
    await page.locator('.findings-part[aria-busy="false"]').waitFor();
    await page.evaluate(installWatch);
    const browserSession = await context.newCDPSession(page);
    const throttle = (/** @type {number} */ rate) => browserSession.send("Emulation.setCPUThrottlingRate", { rate });
    await throttle(throttling);
    const found = [];
    for (let round = 0; round < rounds; round++) {
      for (const edit of edits) found.push(await measureEdit(page, edit, round));
    }
    await throttle(1);
    await page.getByRole("button", { name: /Every hour of the year/ }).click();
    await page.getByRole("slider", { name: "hour of the year" }).waitFor({ timeout: 120_000 });
    await throttle(throttling);
    const scrub = await page.evaluate(scrubHours, scrubSeconds);
    return { edits: found, ...scrub };
  } finally {
    await browser.close();
    server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * @param {import("playwright-core").Page} page
 * @param {string[]} edit
 * @param {number} round
 * @returns {Promise<Redrawn>}
 */
async function measureEdit(page, [section = "", field = "", there = "", back = ""], round) {
  await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: section });
  const input = page.locator(`.part-panel [data-path$="].${field}"] input`);
  await input.fill(round % 2 === 0 ? there : back);
  await page.evaluate(() => /** @type {any} */ (window).watch.begin());
  await input.press("Enter");
  return page.evaluate(() => /** @type {any} */ (window).watch.end());
}

/**
 * @param {string} file
 * @returns {Promise<{ address: string, stop: () => void }>}
 */
function startServer(file) {
  const program = join(projectRoot, "packages", "node", "dist", "cli", "main.js");
  const server = spawn(process.execPath, [program, "serve", file, "--port", "0", "--no-open"]);
  return new Promise((resolve, reject) => {
    let said = "";
    server.stdout.on("data", (/** @type {Buffer} */ chunk) => {
      said += chunk;
      const address = /http:\S+/.exec(said)?.[0];
      if (address !== undefined) resolve({ address, stop: () => server.kill() });
    });
    server.on("exit", () => reject(new Complaint("the server of the page did not start.")));
  });
}

/**
 * @param {readonly number[]} values
 * @param {number} share 0…1
 */
function percentile(values, share) {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

/** @param {PageFigures} figures */
export function printPage({ edits: found, framesPerSecond, longestFrame }) {
  const milliseconds = (/** @type {number} */ value) => `${value.toFixed(0)} ms`.padStart(8);
  console.log(`  ${found.length} edits of ${job}      median   95th percentile`);
  for (const region of [...regions, /** @type {const} */ ("all")]) {
    const values = found.map((each) => each[region]);
    const words = region === "all" ? "edit to all of it redrawn" : `edit to ${region}`;
    console.log(
      `  ${words.padEnd(28)} ${milliseconds(percentile(values, 0.5))} ${milliseconds(percentile(values, 0.95))}`,
    );
  }
  console.log(
    `  scrubbing hours: ${framesPerSecond.toFixed(0)} frames a second, longest ${longestFrame.toFixed(0)} ms`,
  );
}
