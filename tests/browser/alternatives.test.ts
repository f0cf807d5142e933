import { describe, expect, it } from "vitest";
import { servedPages } from "./served-page.test-data.ts";

const opened = servedPages();

describe("alternatives", () => {
  it("of the coil are found in the worker; one is taken as a step that undo takes back, and the result is kept", async () => {
    const { page, complaints, stored } = await opened();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "cooling coil" });
    const band = page.getByRole("region", { name: "alternatives", exact: true });
    await band.getByRole("button", { name: /Other coils/ }).press("Enter");
    const table = band.getByRole("region", { name: "table of alternatives" });
    await table.waitFor({ timeout: 60_000 });
    expect(await band.getByRole("status").textContent()).toMatch(
      /\d+ of [\d,]+ ways leave the air at .* at wet-bulb day/,
    );
    const present = table.locator("tr.present");
    expect(await present.textContent()).toMatch(/present.*plain 5\/8 in812\.092/);
    // A column sorts by its name, and says so.
    await table.getByRole("button", { name: "price" }).click();
    expect(await table.getByRole("columnheader", { name: /price/ }).getAttribute("aria-sort")).toBe("ascending");
    const first = table.locator("tbody tr").first().getByRole("button", { name: /^take/ });
    const name = ((await first.getAttribute("aria-label")) ?? "").replace("take ", "");
    await first.click();
    expect(await page.locator(".file-words").textContent()).toContain("not saved");
    const undo = page.getByRole("button", { name: "undo" });
    expect(await undo.getAttribute("title")).toBe(`take ${name}`);
    // The one taken stands on top at once, whatever the worker still does.
    await expect.poll(() => present.textContent()).toContain(name.split(", ")[3]?.replace("typical ", ""));
    const surface = page.getByRole("complementary", { name: "part in hand" }).getByLabel("surface", { exact: true });
    expect(await surface.inputValue()).toBe(name.split(", ")[3]);
    await undo.click();
    await expect.poll(() => present.textContent()).toMatch(/plain 5\/8 in812\.092/);
    // The result of this text was kept: nothing is under way.
    expect(await band.getByRole("progressbar").count()).toBe(0);
    expect(await stored()).toContain("circuits: 92");
    expect(complaints).toEqual([]);
  });

  it("are reached in the plot by the keyboard alone, and taken by Enter; limits that cannot be read are told", async () => {
    const { page, complaints } = await opened();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "fan" });
    const band = page.getByRole("region", { name: "alternatives", exact: true });
    await band.getByRole("button", { name: /Other fans/ }).press("Enter");
    const points = band.getByRole("listbox", { name: /points of the plot/ });
    await points.waitFor({ timeout: 60_000 });
    await points.focus();
    await page.keyboard.press("End");
    await page.keyboard.press("ArrowLeft");
    const chosen = await points.getByRole("option", { selected: true }).getAttribute("aria-label");
    const row = band.locator("tr.in-hand");
    expect(await row.getByRole("button").getAttribute("aria-label")).toBe(`take ${chosen?.split(":")[0]}`);
    await page.keyboard.press("Enter");
    const undo = page.getByRole("button", { name: "undo" });
    await expect.poll(() => undo.getAttribute("title")).toBe(`take ${chosen?.split(":")[0]}`);
    await undo.click();
    await band.getByText("limits", { exact: true }).click();
    const most = band.getByLabel("most fans", { exact: true });
    await most.fill("many");
    await most.press("Enter");
    await band
      .getByText(/"many"/)
      .first()
      .waitFor();
    await most.fill("1");
    await most.press("Enter");
    await expect.poll(() => band.locator("tbody tr").count()).toBeGreaterThan(0);
    await expect
      .poll(async () => new Set(await band.locator("tbody tr td:nth-child(3)").allTextContents()))
      .toEqual(new Set(["1"]));
    expect(complaints).toEqual([]);
  });

  it("go to the clipboard as a table for a spreadsheet", async () => {
    const { page } = await opened();
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "fan" });
    const band = page.getByRole("region", { name: "alternatives", exact: true });
    await band.getByRole("button", { name: /Other fans/ }).click();
    await band.getByRole("button", { name: /copy table/ }).click({ timeout: 60_000 });
    await page.getByText("copied the alternatives for a spreadsheet").waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    const lines = copied.trimEnd().split("\n");
    expect(lines[0]).toMatch(/wheel\tfans\tdiameter \[in\]/);
    expect(lines.length).toBeGreaterThan(10);
    expect(new Set(lines.map((line) => line.split("\t").length)).size).toBe(1);
  });
});
