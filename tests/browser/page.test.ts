import { describe, expect, it } from "vitest";
import { servedPages, typeJobText } from "./served-page.test-data.ts";

const opened = servedPages();

/** The kinds of the sections in a job text, in order. */
const kindsIn = (text: string) => [...text.matchAll(/^\s+- kind: (.+)$/gm)].map((found) => found[1]);

describe("the page with the demo", () => {
  it("draws every section of the job, in airflow order, without a complaint of the browser", async () => {
    const { page, complaints, stored } = await opened();
    const names = await page
      .getByRole("option")
      .evaluateAll((options) =>
        options.filter((each) => each.closest("svg") !== null).map((each) => each.getAttribute("aria-label") ?? ""),
      );
    const kinds = kindsIn(await stored());
    expect(kinds.length).toBeGreaterThan(5);
    expect(names).toHaveLength(kinds.length);
    for (const [index, kind] of kinds.entries()) expect(names[index]).toContain(kind);
    const drawn = await page
      .locator("section.airway .painted path")
      .evaluateAll((paths) => [...new Set(paths.map((each) => each.getAttribute("data-section")))]);
    for (const name of names) expect(drawn, name).toContain(name.split(", ")[0]);
    await page.getByText(/over 16 conditions/).waitFor();
    await page.getByRole("textbox", { name: "job text" }).waitFor();
    expect(complaints).toEqual([]);
  });

  it("keeps the token to itself: the address is clean, and a reload still finds the job", async () => {
    const { page, address } = await opened();
    expect(address).toContain("token=");
    expect(page.url()).not.toContain("token");
    await page.reload();
    await page.getByRole("heading", { level: 1, name: "MA-2" }).waitFor();
    expect(await page.locator(".file-words").textContent()).toContain("marine-biology-wing.yaml");
  });

  it("names everything that can be reached", async () => {
    const { page } = await opened();
    await page.getByRole("textbox", { name: "job text" }).waitFor();
    const unnamed = await page
      .locator("button, input, select, [role=option], [role=listbox], dialog")
      .evaluateAll((elements) =>
        elements
          .filter((element) => {
            const labels = (element as HTMLInputElement).labels;
            const label = [...(labels ?? [])].map((each) => each.textContent).join("");
            const own = element.getAttribute("aria-label") ?? (element.tagName === "BUTTON" ? element.textContent : "");
            return `${label}${own}`.trim() === "";
          })
          .map((element) => element.outerHTML.slice(0, 120)),
      );
    expect(unnamed).toEqual([]);
    for (const name of ["condition", "part in hand", "psychrometric chart", "job text", "what is not met"]) {
      expect(await page.getByRole("region", { name }).or(page.getByRole("complementary", { name })).count(), name).toBe(
        1,
      );
    }
  });
});

describe("the fan in hand", () => {
  it("shows its chart at the condition in hand, in the units in hand, and gives the place back", async () => {
    const { page, complaints } = await opened();
    await page.getByText(/over 16 conditions/).waitFor();
    const part = page.getByRole("combobox", { name: "part in hand" });
    await part.selectOption({ label: "fan" });
    const chart = page.getByRole("region", { name: "fan chart" });
    const picture = chart.getByRole("img");
    await picture.waitFor();
    // All running conditions of the sixteen stand in each of the three panels.
    await expect.poll(() => chart.locator("circle").count()).toBe(14 * 3);
    expect(await picture.getAttribute("aria-label")).toMatch(/in\.wg.*hp.*rpm/);
    // The system curves follow from the page's worker.
    await expect.poll(() => chart.locator("text").allTextContents(), { timeout: 15_000 }).toContain("at change-out");
    const texts = await chart.locator("text").allTextContents();
    for (const text of ["Static pressure", "Shaft power", "Efficiency", "may surge", "at change-out", "filters clean"])
      expect(texts).toContain(text);
    const ledger = page.getByRole("region", { name: "pressure ledger" });
    await ledger.getByRole("img").waitFor();
    const spent = await ledger.locator("text").allTextContents();
    for (const text of ["filters", "duct system", "velocity at the end", "fan total pressure"])
      expect(spent).toContain(text);
    const heard = page.getByRole("region", { name: "sound" });
    await heard.getByRole("img").waitFor();
    for (const text of ["intake", "discharge", "casing"])
      expect(await heard.locator("text").allTextContents()).toContain(text);
    expect(await page.getByRole("region", { name: "psychrometric chart" }).count()).toBe(0);
    await part.selectOption({ label: "cabinet" });
    await page.getByRole("region", { name: "psychrometric chart" }).waitFor();
    expect(complaints).toEqual([]);
  });
});

describe("editing", () => {
  it("a field of the panel changes its bytes of the text, the figures and the drawing; undo brings all back", async () => {
    const { page, stored } = await opened();
    const before = await stored();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "fan" });
    const panel = page.getByRole("complementary", { name: "part in hand" });
    const figures = panel.getByRole("region", { name: "what follows" });
    const figuresBefore = await figures.textContent();
    const diameter = panel.getByLabel("diameter", { exact: true });
    const typed = await diameter.inputValue();
    await diameter.fill("32 in");
    await diameter.press("Enter");
    expect(await figures.textContent()).not.toBe(figuresBefore);
    expect(await page.locator(".file-words").textContent()).toContain("not saved");
    await page.getByRole("button", { name: "save" }).click();
    await page.getByText("saved marine-biology-wing.yaml").waitFor();
    expect(await stored()).toBe(before.replace(`diameter: ${typed}`, "diameter: 32 in"));
    await page.getByRole("button", { name: "undo" }).click();
    expect(await diameter.inputValue()).toBe(typed);
    expect(await figures.textContent()).toBe(figuresBefore);
  });

  it("an error in the text is shown with its line, and the last sound drawing stays", async () => {
    const { page, stored } = await opened();
    const text = await stored();
    const broken = text.replace("design: 18000 cfm", "design: 18000 apples");
    expect(broken).not.toBe(text);
    const line = broken.split("\n").findIndex((each) => each.includes("apples")) + 1;
    await page.getByRole("textbox", { name: "job text" }).waitFor();
    await typeJobText(page, broken);
    const errors = page.getByRole("list", { name: "errors in the text" });
    await errors.getByText(`line ${line}, column`).waitFor();
    expect(await errors.textContent()).toMatch(/cfm/);
    expect(await page.locator(".stale").textContent()).toContain("drawing shows the last sound text");
    expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe("MA-2");
    await typeJobText(page, text);
    await errors.waitFor({ state: "detached" });
    expect(await page.locator(".stale").count()).toBe(0);
    expect(await page.locator(".file-words").textContent()).not.toContain("not saved");
  });

  it("keeps unsaved text over a reload, as a step that can be undone", async () => {
    const { page, stored } = await opened();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "cabinet" });
    const height = page.getByLabel("height", { exact: true });
    const before = await height.inputValue();
    await height.fill("84 in");
    await height.press("Enter");
    await page.reload();
    await page.getByText(/unsaved text of last time is back/).waitFor();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "cabinet" });
    expect(await page.getByLabel("height", { exact: true }).inputValue()).toBe("84 in");
    await page.getByRole("button", { name: "undo" }).click();
    expect(await page.getByLabel("height", { exact: true }).inputValue()).toBe(before);
    expect(await stored()).not.toContain("84 in");
  });

  it("asks when the file has changed on the disk, and writes nothing before", async () => {
    const { page, stored, store } = await opened();
    const text = await stored();
    await store(text.replace("tag: MA-2", "tag: MA-3"));
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "duty" });
    await page.getByLabel("tag", { exact: true }).fill("MA-4");
    await page.getByLabel("tag", { exact: true }).press("Enter");
    await page.keyboard.press("ControlOrMeta+s");
    const dialog = page.getByRole("dialog", { name: "the file has changed" });
    await dialog.waitFor();
    expect(await stored()).toContain("tag: MA-3");
    await dialog.getByRole("button", { name: /mine/ }).click();
    await page.getByText("saved marine-biology-wing.yaml").waitFor();
    expect(await stored()).toBe(text.replace("tag: MA-2", "tag: MA-4"));
  });
});

describe("looking", () => {
  it("switches units for what is read, and leaves what is typed", async () => {
    const { page } = await opened();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "fan" });
    const supply = page.locator(".unit-words");
    expect(await supply.textContent()).toContain("scfm");
    const typed = await page.getByLabel("diameter", { exact: true }).inputValue();
    await page.getByText("SI", { exact: true }).click();
    expect(await supply.textContent()).toMatch(/standard m³\/s/);
    expect(await page.locator("section.airway svg").textContent()).toContain("°C");
    expect(await page.getByLabel("diameter", { exact: true }).inputValue()).toBe(typed);
  });

  it("picks conditions and filter loading, and the figures follow", async () => {
    const { page } = await opened();
    const chart = page.getByRole("img", { name: /Psychrometric chart/ });
    await page.getByRole("radio", { name: "winter" }).first().check({ force: true });
    expect(await chart.getAttribute("aria-label")).toContain("winter");
    const power = page.locator(".unit-words");
    const half = await power.textContent();
    await page.getByRole("slider", { name: "filter loading" }).focus();
    await page.keyboard.press("ArrowRight");
    expect(await page.getByRole("slider", { name: "filter loading" }).getAttribute("aria-valuetext")).toBe(
      "at change-out",
    );
    expect(await power.textContent()).not.toBe(half);
  });

  it("picks sections by keyboard alone, and the text and the panel follow", async () => {
    const { page } = await opened();
    const sections = page.getByRole("listbox", { name: "sections in airflow order" });
    const heading = page.getByRole("complementary", { name: "part in hand" }).getByRole("heading", { level: 2 });
    for (let presses = 0; presses < 40; presses += 1) {
      if (await sections.evaluate((element) => element === document.activeElement)) break;
      await page.keyboard.press("Tab");
    }
    expect(await sections.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press("Home");
    expect(await heading.textContent()).toBe("intake hood");
    await page.keyboard.press("ArrowRight");
    expect(await heading.textContent()).toBe("louver");
    expect(await sections.getAttribute("aria-activedescendant")).toBe("section-1");
    // An editor out of sight draws none of its lines.
    await page.getByRole("textbox", { name: "job text" }).scrollIntoViewIfNeeded();
    const marked = page.locator(".code-field .marked-line").first();
    expect(await marked.textContent()).toContain("kind: louver");
  });

  it("shows the state at the station under the pointer", async () => {
    const { page } = await opened();
    const box = await page.locator("section.airway svg").boundingBox();
    await page.mouse.move(box!.x + box!.width - 20, box!.y + 200);
    const words = page.locator(".station-name");
    const kinds = await page.locator(".section-hands [role=option]").last().getAttribute("aria-label");
    expect(await words.textContent()).toBe(`after ${kinds}`);
  });

  it("shows the working of a figure: equation, values, result, source", async () => {
    const { page } = await opened();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "intake hood" });
    const figure = page.getByRole("button", { name: /^velocity in the opening/ });
    const value = await figure.locator("strong").textContent();
    await figure.click();
    const working = page.locator(".working");
    expect(await working.locator(".equation").textContent()).toBe("V = Q / A");
    expect(await working.locator("tfoot .number").first().textContent()).toBe(value);
    expect(await figure.getAttribute("aria-expanded")).toBe("true");
  });
});
