import { describe, expect, it } from "vitest";
import { servedPages } from "./served-page.test-data.ts";

const opened = servedPages();

describe("variants", () => {
  it("are kept by name, outlive the page, stand side by side with what differs, and are taken back as a step", async () => {
    const { page, complaints } = await opened();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "cooling coil" });
    await page.getByRole("button", { name: /^variants/ }).click();
    const sheet = page.getByRole("dialog", { name: "variants" });
    await sheet.getByLabel("keep the job on the bench as").fill("as asked");
    await page.keyboard.press("Enter");
    await sheet.getByRole("columnheader", { name: /as asked/ }).waitFor({ timeout: 60_000 });
    await sheet.getByRole("button", { name: "close" }).click();
    const rows = page.getByRole("complementary", { name: "part in hand" }).getByLabel("rows", { exact: true });
    await rows.fill("10");
    await rows.press("Enter");
    await page.reload();
    await page.getByRole("button", { name: "variants 1" }).click();
    const line = sheet.getByRole("row", { name: /^cooling coil rows/ });
    await line.waitFor({ timeout: 60_000 });
    expect(await line.getByRole("cell").allTextContents()).toEqual(["10", "8"]);
    expect(await sheet.getByRole("row", { name: /^mass, dry/ }).textContent()).toMatch(/−[\d,.]+ lb/);
    await sheet.getByRole("button", { name: "take as asked to the bench" }).click();
    await sheet.getByRole("button", { name: "close" }).click();
    await expect.poll(() => page.getByRole("button", { name: "undo" }).getAttribute("title")).toBe("as asked");
    expect(complaints).toEqual([]);
  }, 180_000);
});

describe("the tour", () => {
  it("walks over the page by the keyboard alone and can be left at any step; jobs of late can be opened again", async () => {
    const { page, complaints } = await opened();
    await page.getByRole("button", { name: "tour" }).press("Enter");
    const tour = page.getByRole("dialog", { name: "tour of the page" });
    await tour.getByRole("heading", { name: "The machine is the page" }).waitFor();
    await page.keyboard.press("Enter");
    await tour.getByRole("heading", { name: "Days and filters" }).waitFor();
    await page.keyboard.press("Escape");
    await tour.waitFor({ state: "detached" });
    const open = page.getByRole("button", { name: "open", exact: true });
    const dialog = page.getByRole("dialog", { name: "open a job" });
    await open.click();
    await dialog.getByRole("button", { name: "high-country-soils-laboratory.yaml" }).click();
    await open.click();
    await dialog.getByRole("heading", { name: "lately" }).waitFor();
    await dialog.getByRole("button", { name: "marine-biology-wing.yaml" }).first().click();
    await expect.poll(() => page.locator(".header-bar h1").textContent()).toBe("MA-2");
    expect(complaints).toEqual([]);
  });
});
