import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { servedPages } from "./served-page.test-data.ts";

const opened = servedPages();

/** Types into the field of that name on the leaf of that number, and takes it over. */
async function say(page: Page, leaf: string, field: string, value: string) {
  const line = page.getByRole("region", { name: leaf }).getByLabel(field, { exact: true }).first();
  await line.fill(value);
  await line.press("Enter");
}

// Place, people and numbers are invented.
const days: readonly (readonly [string, string])[] = [
  ["hottest: dry bulb", "91 °F"],
  ["hottest: wet bulb", "76 °F"],
  ["highest wet bulb: dry bulb", "86 °F"],
  ["highest wet bulb: wet bulb", "79 °F"],
  ["highest dew point: dry bulb", "82 °F"],
  ["highest dew point: dew point", "77 °F"],
  ["winter: dry bulb", "8 °F"],
  ["winter: relative humidity", "75 %"],
];

describe("a new unit", () => {
  it("goes from a blank duty to a unit on the bench; what is needed, contradicts and is assumed stands beside", async () => {
    const { page, complaints } = await opened();
    await page.getByRole("button", { name: "new", exact: true }).click();
    const sheet = page.getByRole("dialog", { name: "A new unit" });
    const side = sheet.getByRole("complementary", { name: "how the enquiry stands" });
    await side.getByText("6 answers needed").waitFor();
    // A needed answer leads to its field.
    await side.getByRole("button", { name: "the design airflow" }).click();
    await page.keyboard.type("12000 cfm");
    await page.keyboard.press("Enter");
    await side.getByText("5 answers needed").waitFor();
    await say(page, "The worst days", "altitude", "30 ft");
    for (const [field, value] of days) await say(page, "The worst days", field, value);
    await say(page, "What the laboratories need", "coil leaving", "53 °F");
    await say(page, "What the laboratories need", "winter supply", "60 °F");
    await say(page, "What the laboratories need", "pressure", "2.25 in.wg");
    // Nothing heats or cools yet: the duty says so itself, and one hand mends each.
    await side.getByText("What contradicts itself").waitFor();
    expect(await side.getByRole("button", { name: "size the unit" }).isDisabled()).toBe(true);
    await sheet.getByRole("button", { name: "there is steam" }).click();
    await sheet.getByRole("button", { name: "there is chilled water" }).click();
    await side.getByText(/\d+ questions open/).waitFor();
    // What was said outlives the page.
    await page.reload();
    await page.getByRole("button", { name: "new", exact: true }).click();
    await side.getByRole("button", { name: "size the unit" }).click();
    await side.getByRole("button", { name: "put it on the bench" }).click({ timeout: 90_000 });
    await sheet.waitFor({ state: "detached" });
    await expect.poll(() => page.locator(".header-bar h1").textContent()).toBe("AHU-1");
    expect(await page.locator(".file-words").textContent()).toContain("ahu-1.yaml");
    expect(await page.locator(".price-bar strong").first().textContent()).toMatch(/^\$[\d,]+$/);
    expect(complaints).toEqual([]);
    // Some forty acts and a sizing: long where machines are slow.
  }, 240_000);

  it("takes place and design days from a weather file's header, and says why it cannot", async () => {
    const { page } = await opened();
    await page.getByRole("button", { name: "new", exact: true }).click();
    const leaf = page.getByRole("region", { name: "The worst days" });
    const file = leaf.getByLabel("from a weather file");
    await file.setInputFiles({ name: "empty.epw", mimeType: "text/plain", buffer: Buffer.from("") });
    await leaf.getByText("empty.epw: the file is empty").waitFor();
  });
});

describe("help", () => {
  it("tells what matters for the section in hand, and leads on to how it is calculated", async () => {
    const { page, complaints } = await opened();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "cooling coil" });
    await page.getByRole("button", { name: "what matters" }).click();
    const help = page.getByRole("dialog", { name: "help" });
    await help.getByRole("heading", { name: "Mistakes that happen" }).waitFor();
    await help.getByRole("link", { name: "Cooling with condensation" }).click();
    await help.getByRole("heading", { name: "Cooling with condensation" }).waitFor();
    await page.keyboard.press("Escape");
    await help.waitFor({ state: "detached" });
    expect(complaints).toEqual([]);
  });
});
