import { existsSync } from "node:fs";
import { copyFile, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openJobFolder } from "@oncethrough/node/files/job-folder";
import { readShopFolder } from "@oncethrough/node/files/shop-folder";
import { serve } from "@oncethrough/node/server/serve";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, onTestFinished } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const siteFolder = join(root, "packages", "web", "dist", "site");
const demo = "marine-biology-wing.yaml";

/** The system's browser; it may not ask anything of the network. */
const browserArguments = [
  "--headless",
  "--no-sandbox",
  "--use-gl=angle",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts the browser that `npm test` found. */
function startBrowser(): Promise<Browser> {
  const executablePath = process.env.ONCETHROUGH_BROWSER ?? "/usr/bin/chromium";
  return chromium.launch({ executablePath, args: browserArguments });
}

/** The page as it is served, with the demo in a folder of its own. */
export interface ServedPage {
  readonly page: Page;
  readonly address: string;
  /** What the page and its console complained about so far. */
  readonly complaints: readonly string[];
  /** A job's text as it lies on the disk; the demo's when none is named. */
  readonly stored: (name?: string) => Promise<string>;
  /** Another hand writes the file. */
  readonly store: (text: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

export interface PageOptions {
  readonly width?: number;
  readonly height?: number;
  readonly colorScheme?: "light" | "dark";
  /** Owners' profiles that the server gives the page. */
  readonly ownProfiles?: readonly { readonly path: string; readonly text: string }[];
}

/**
 * One browser for a file of tests. What is given back opens the page for one test, with a server, a folder and a
 * memory of its own that go when the test has finished.
 */
export function servedPages(): (options?: PageOptions) => Promise<ServedPage> {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(() => browser?.close());
  return async (options) => {
    const served = await openServedPage(browser, options);
    onTestFinished(() => served.close());
    return served;
  };
}

/** Serves the built page over the program's own server, and opens it by the printed address. */
async function openServedPage(browser: Browser, options: PageOptions = {}): Promise<ServedPage> {
  if (!existsSync(join(siteFolder, "index.html"))) throw new Error("the page is not built: run `npm run build` first");
  const jobs = await mkdtemp(join(tmpdir(), "oncethrough-page-"));
  const file = join(jobs, demo);
  await copyFile(join(root, "examples", demo), file);
  const { folder } = await openJobFolder(jobs);
  const serving = await serve({
    folder,
    startJob: demo,
    siteFolder,
    shopCatalogue: [],
    ownProfiles: options.ownProfiles ?? [],
    shopBooks: await readShopFolder(undefined),
    port: 0,
  });
  const { width = 1280, height = 900, colorScheme = "light" } = options;
  const context = await browser.newContext({ viewport: { width, height }, colorScheme, reducedMotion: "reduce" });
  // A busy machine may take its time; what never comes still ends the test.
  context.setDefaultTimeout(120_000);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.goto(serving.address);
  await page.getByRole("listbox", { name: "sections in airflow order" }).waitFor();
  return {
    page,
    address: serving.address,
    complaints,
    stored: (name = demo) => readFile(join(jobs, name), "utf8"),
    store: (text) => writeFile(file, text),
    close: async () => {
      await context.close();
      await serving.close();
      await rm(jobs, { recursive: true, force: true });
    },
  };
}

/** Puts a text into the job editor in place of what stands there, as a hand would. */
export async function typeJobText(page: Page, text: string): Promise<void> {
  const editor = page.getByRole("textbox", { name: "job text" });
  await editor.click();
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.insertText(text);
}
