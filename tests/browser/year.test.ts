import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { servedPages } from "./served-page.test-data.ts";

const opened = servedPages();

describe("every hour of the year", () => {
  it("is solved in a worker that can be stopped; an hour picked is drawn in the airway; bad weather is refused", async () => {
    const { page, complaints } = await opened();
    const band = page.getByRole("region", { name: "every hour of the year" });
    await band.getByRole("button", { name: /Every hour of the year/ }).press("Enter");
    await band.getByText("synthetic year").first().waitFor();
    await band.getByRole("button", { name: "stop" }).press("Enter");
    expect(await band.getByRole("alert").textContent()).toContain("part of a year is not shown");
    expect(await band.getByRole("table").count()).toBe(0);
    await band.getByRole("button", { name: "solve again" }).press("Enter");
    await band.getByRole("img", { name: /Leaving air/ }).waitFor({ timeout: 120_000 });
    expect(await band.getByRole("table").textContent()).toMatch(/fan electricity[\d,]+ kWh/);
    // By keys alone: the last hour of the year, then the one before.
    const scrubber = band.getByRole("slider", { name: "hour of the year" });
    await scrubber.focus();
    await page.keyboard.press("End");
    await expect.poll(() => scrubber.getAttribute("aria-valuetext")).toBe("31 Dec 24:00");
    await page.keyboard.press("ArrowLeft");
    await expect.poll(() => scrubber.getAttribute("aria-valuetext")).toBe("31 Dec 23:00");
    const profiles = page.getByRole("region", { name: /airway of the unit/ });
    const winter = await profiles.locator("svg").first().innerHTML();
    await band.getByRole("img", { name: /Coil load/ }).click({ position: { x: 320, y: 90 } });
    await expect.poll(() => scrubber.getAttribute("aria-valuetext")).toMatch(/(May|Jun|Jul|Aug)/);
    await expect.poll(() => profiles.locator("svg").first().innerHTML()).not.toBe(winter);
    // A day of the job takes the hour out of hand.
    await page.getByRole("group", { name: "design days", exact: true }).getByLabel("winter").check({ force: true });
    await expect.poll(() => scrubber.getAttribute("aria-valuetext")).toBe("no hour in hand");
    const folder = await mkdtemp(join(tmpdir(), "oncethrough-weather-"));
    onTestFinished(() => rm(folder, { recursive: true, force: true }));
    const file = join(folder, "part.csv");
    await writeFile(file, "time,dry bulb [°C],dew point [°C]\n2023-01-01 01:00,3,1\n");
    await band.getByLabel("weather file, EPW or CSV").setInputFiles(file);
    await expect.poll(() => band.getByRole("alert").textContent()).toMatch(/part\.csv.*needed:/);
    expect(complaints).toEqual([]);
  }, 180_000);
});
