import { readdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { servedPages } from "./served-page.test-data.ts";

const openPage = servedPages();
const site = join(dirname(fileURLToPath(import.meta.url)), "..", "..", "packages", "web", "dist", "site");

describe("the page without its server", () => {
  it("opens parts that nobody had asked for before, and comes up again when it is loaded anew", async () => {
    const { page } = await openPage();
    const built = (await readdir(site, { recursive: true, withFileTypes: true })).filter((each) => each.isFile());
    const kept = () =>
      page.evaluate(async () => {
        const names = await caches.keys();
        const files = await Promise.all(names.map(async (name) => (await (await caches.open(name)).keys()).length));
        const isLed = navigator.serviceWorker.controller !== null;
        return isLed ? files.reduce((sum, count) => sum + count, 0) : 0;
      });
    // All but the program that keeps them.
    await expect.poll(kept, { timeout: 120_000 }).toBe(built.length - 1);
    const told = await page.evaluate(async () => {
      const requests = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
      return requests.flat().map(({ url }) => url);
    });
    expect(told.filter((url) => url.includes("/api") || url.includes("token"))).toEqual([]);
    await page.context().setOffline(true);
    await page.getByRole("button", { name: "help", exact: true }).click();
    await page.getByRole("dialog").getByRole("heading").first().waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("group", { name: "view of the machine" }).getByText("3D").click();
    await page.locator("canvas").first().waitFor();
    await page.reload();
    await page.getByRole("listbox", { name: "sections in airflow order" }).waitFor();
  }, 240_000);
});
