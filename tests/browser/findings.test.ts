import { readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { servedPages } from "./served-page.test-data.ts";

const opened = servedPages();

/** ms that a busy machine may take to judge an edit, and to look for a fix. */
const patience = { timeout: 60_000 };

/** ms for a whole test: several fixes are looked for before the one that is applied. */
const long = 240_000;

describe("findings", { timeout: long }, () => {
  it("stand on the drawing; a flag opens the finding, its fix is applied with one click, and undo takes it back", async () => {
    const { page, complaints } = await opened();
    const flag = page.getByRole("button", { name: /^cooling coil: \d+ advice/ });
    await flag.waitFor(patience);
    await flag.press("Enter");
    expect(await flag.getAttribute("aria-pressed")).toBe("true");
    const part = page.getByRole("complementary", { name: "part in hand" });
    const here = part.getByRole("region", { name: "findings here" });
    await here.locator(".finding-open").waitFor(patience);
    // One finding whose fix is known: the pan may always be made longer.
    const row = here.locator(".finding", { hasText: "pan reach half the coil's height" });
    await row.getByRole("button", { name: /pan reach/ }).click();
    const apply = row.getByRole("button", { name: "apply the fix" });
    await apply.waitFor(patience);
    const words = (await row.locator(".fix-block").textContent()) ?? "";
    for (const name of ["margin then", "price", "mass", "length", "fan pressure"]) expect(words).toContain(name);
    await apply.click();
    const undo = page.getByRole("button", { name: "undo" });
    expect(await undo.getAttribute("title")).toMatch(/^mend pan reach half the coil's height: cooling coil: pan reach/);
    await row.filter({ hasText: "advice" }).waitFor({ state: "detached", ...patience });
    await undo.click();
    await row.filter({ hasText: "advice" }).waitFor(patience);
    expect(complaints).toEqual([]);
  });

  it("are filtered, opened with rule, source and certainty, and let go by name and reason", async () => {
    const { page, stored, complaints } = await opened();
    const part = page.getByRole("region", { name: "findings", exact: true });
    const list = part.getByRole("list", { name: /^findings/ });
    await list.locator("li.finding").first().waitFor(patience);
    const minded = await list.locator("li.finding").count();
    await part.getByLabel("standing").selectOption("holds");
    await expect.poll(() => list.locator("li.finding").count()).toBeGreaterThan(minded);
    await part.getByLabel("standing").selectOption("to mind");
    await part.getByLabel("certainty of the source").selectOption("from memory");
    for (const text of await list.locator("li.finding small").allTextContents()) expect(text).toContain("from memory");
    await part.getByRole("button", { name: "as at first" }).click();
    const row = list.locator("li.finding", { hasText: "coil height over a pan" });
    await row.getByRole("button", { name: /coil height/ }).click();
    await row.getByText("It protects").waitFor();
    expect(await row.getByRole("list", { name: "sources" }).textContent()).toMatch(/coils seldom above 50 in/);
    expect(await row.textContent()).toContain("read in the source");
    await row.getByRole("button", { name: "let it go, by name and reason" }).click();
    await row.getByLabel("who answers for it").fill("A. Reviewer");
    await row.getByLabel("why it may stay so").fill("the film was looked at: 4 % of the gap");
    await row.getByRole("button", { name: "let it go", exact: true }).click();
    await row.getByText("let go by A. Reviewer").waitFor(patience);
    await page.getByRole("button", { name: "save", exact: true }).click();
    await expect.poll(stored).toMatch(/rule: coil height over a pan\n\s+section: cooling coil\n\s+by: A. Reviewer/);
    await row.getByRole("button", { name: "ask it again" }).click();
    await row.getByText("let go by A. Reviewer").waitFor({ state: "detached", ...patience });
    expect(await page.getByRole("button", { name: "undo" }).getAttribute("title")).toBe(
      "asked again: coil height over a pan",
    );
    expect(complaints).toEqual([]);
  });

  it("follow the owner's profile, which is written into the duty", async () => {
    const { page } = await opened();
    const part = page.getByRole("region", { name: "findings", exact: true });
    const count = part.locator("h2 small");
    await expect.poll(() => count.textContent(), patience).toMatch(/advice/);
    const before = await count.textContent();
    await part.getByLabel("rules of").selectOption("strict once-through");
    await expect.poll(() => count.textContent(), patience).not.toBe(before);
    expect(await count.textContent()).toMatch(/fail/);
    expect(await page.getByRole("button", { name: "undo" }).getAttribute("title")).toBe(
      "owner profile strict once-through",
    );
  });
});

describe("a working", () => {
  it("opens on a figure with equation, values and source, and leads to the method's page", async () => {
    const { page } = await opened();
    const part = page.getByRole("complementary", { name: "part in hand" });
    const figure = part.getByRole("button", { name: /^latent capacity/ });
    await figure.click();
    expect(await figure.getAttribute("aria-expanded")).toBe("true");
    const working = part.locator(".working");
    await working.locator("tbody tr").first().waitFor();
    expect(await working.locator("tbody tr").count()).toBeGreaterThan(0);
    await working.getByRole("button", { name: /how it is worked/ }).click();
    await page.getByRole("dialog", { name: "help" }).waitFor();
  });
});

describe("a picture", () => {
  it("is saved as an SVG file of its own, without what belongs to the hand", async () => {
    const { page } = await opened({ colorScheme: "dark" });
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "svg file: airway" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("airway.svg");
    const text = await readFile(await download.path(), "utf8");
    expect(text).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox=/);
    expect(text).toContain("Static pressure");
    expect(text).not.toMatch(/class=|listbox|var\(--/);
    // Ink on white paper although the page is dark.
    expect(text).toContain('stroke="rgb(29, 42, 51)"');
  });
});
