import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type PageOptions, servedPages } from "./served-page.test-data.ts";

const openedPage = servedPages();

/** The page with its hands, which come right behind it. */
async function opened(options?: PageOptions) {
  const served = await openedPage(options);
  await served.page.getByRole("slider", { name: /clear length/ }).waitFor();
  return served;
}

const sections = (page: Page) => page.getByRole("listbox", { name: "sections in airflow order" });
const names = (page: Page) =>
  sections(page)
    .getByRole("option")
    .evaluateAll((options) => options.map((each) => each.getAttribute("aria-label")?.split(", ")[0] ?? ""));
const demoNames = [
  ...["intake hood", "louver", "mixing box", "filters", "preheat coil", "spray gap", "cooling coil", "access", "fan"],
  "discharge plenum",
];
const undo = (page: Page) => page.getByRole("button", { name: "undo", exact: true });
const heading = (page: Page) =>
  page.getByRole("complementary", { name: "part in hand" }).getByRole("heading", { level: 2 });

async function save(page: Page): Promise<void> {
  await page.keyboard.press("ControlOrMeta+s");
  await page.getByText("saved marine-biology-wing.yaml").waitFor();
}

/** Where a section's column is met without its handles, in px of the window. */
async function middleOf(page: Page, name: string): Promise<{ readonly x: number; readonly y: number }> {
  const index = (await names(page)).indexOf(name);
  const box = (await page.locator(`#section-${index}`).boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + 150 };
}

async function carry(page: Page, name: string, to: { readonly x: number; readonly y: number }): Promise<void> {
  const from = await middleOf(page, name);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + Math.sign(to.x - from.x) * 20, from.y);
  await page.mouse.move(to.x, to.y);
}

describe("sections by the mouse", { timeout: 240_000 }, () => {
  it("are carried along the airway: the place is named while it is sought, and one undo brings all back", async () => {
    const { page, stored } = await opened();
    const before = await stored();
    const behind = await middleOf(page, "fan");
    await carry(page, "access", { x: behind.x + 30, y: behind.y });
    await expect.poll(() => page.locator(".drop-words strong").textContent()).toBe("between fan and discharge plenum");
    await page.mouse.up();
    const moved = demoNames.toSpliced(7, 1).toSpliced(8, 0, "access");
    await expect.poll(() => names(page)).toEqual(moved);
    expect(await heading(page).textContent()).toBe("access");
    expect(await undo(page).getAttribute("title")).toBe("access between fan and discharge plenum");
    await save(page);
    const lines = (text: string) => text.split("\n").toSorted();
    expect(lines(await stored())).toEqual(lines(before));
    await undo(page).click();
    await expect.poll(() => names(page)).toEqual(demoNames);
    await save(page);
    expect(await stored()).toBe(before);
  });

  it("are given up by Escape, and a place that cannot work is explained while tried and when let go there", async () => {
    const { page } = await opened();
    const hood = await middleOf(page, "intake hood");
    await carry(page, "filters", { x: hood.x - 60, y: hood.y });
    await page.locator(".drop-words.impossible", { hasText: "hood hangs outside before the intake" }).waitFor();
    await page.keyboard.press("Escape");
    await page.locator(".drop-words").waitFor({ state: "detached" });
    await page.mouse.up();
    expect(await names(page)).toEqual(demoNames);
    const fan = await middleOf(page, "fan");
    await carry(page, "mixing box", { x: fan.x + 40, y: fan.y });
    await page.mouse.up();
    await page.locator(".airway-notice", { hasText: "mixing box stands behind the fan" }).waitFor();
    expect(await names(page)).toEqual(demoNames);
    expect(await undo(page).isDisabled()).toBe(true);
  });

  it("are made longer at their end, with the length in sight, snapped to whole inches", async () => {
    const { page, stored } = await opened();
    const before = await stored();
    await sections(page)
      .getByRole("option", { name: "access" })
      .click({ position: { x: 10, y: 120 } });
    const grip = page.getByRole("slider", { name: "clear length of access" });
    expect(await grip.getAttribute("aria-valuetext")).toBe("30 in");
    const box = (await grip.boundingBox())!;
    await page.mouse.move(box.x + 12, box.y + 10);
    await page.mouse.down();
    await page.mouse.move(box.x + 60, box.y + 10, { steps: 3 });
    const words = (await page.locator(".length-words").textContent())!;
    expect(words).toMatch(/^\d+ in$/);
    // The drawing follows the pointer; nothing is written before the hand lets go.
    const drawn = page.locator("section.airway .painted text");
    await expect.poll(() => drawn.allTextContents()).toContain(words.replace(" in", "″"));
    expect(await page.locator(".file-words").textContent()).not.toContain("not saved");
    await page.mouse.up();
    await expect.poll(() => grip.getAttribute("aria-valuetext")).toBe(words);
    expect(Number.parseInt(words, 10)).toBeGreaterThan(30);
    await save(page);
    expect(await stored()).toBe(
      before.replace("name: access\n      length: 30 in", `name: access\n      length: ${words}`),
    );
  });

  it("are added between two, by kind, each with what it is for; and removed again", async () => {
    const { page } = await opened();
    await page.getByRole("button", { name: "add a section between cooling coil and access" }).click();
    const dialog = page.getByRole("dialog", { name: "add a section" });
    expect(await dialog.getByRole("button", { name: /^fan / }).textContent()).toContain("a second fan");
    expect(await dialog.getByRole("button", { name: /^hot-water coil/ }).textContent()).toMatch(/needs heating water/);
    await dialog.getByRole("button", { name: /^moisture eliminator Bent blades/ }).click();
    await expect.poll(() => names(page)).toEqual(demoNames.toSpliced(7, 0, "moisture eliminator"));
    expect(await heading(page).textContent()).toBe("moisture eliminator");
    await page.getByRole("toolbar", { name: "moisture eliminator in the airway" }).getByText("remove").click();
    await expect.poll(() => names(page)).toEqual(demoNames);
  });
});

describe("sections by a finger", { timeout: 240_000 }, () => {
  it("are carried along the airway on a tablet", async () => {
    const { page } = await opened({ width: 820, height: 1180 });
    const client = await page.context().newCDPSession(page);
    const touch = (type: "touchStart" | "touchMove" | "touchEnd", x: number, y: number) =>
      client.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [{ x, y }] });
    const [from, to] = [await middleOf(page, "filters"), await middleOf(page, "preheat coil")];
    await touch("touchStart", from.x, from.y);
    await touch("touchMove", from.x + 12, from.y);
    await touch("touchMove", to.x + 12, from.y);
    await page.locator(".drop-words", { hasText: "between preheat coil and spray gap" }).waitFor();
    await touch("touchEnd", to.x, from.y);
    await expect.poll(() => names(page)).toEqual(demoNames.toSpliced(3, 1).toSpliced(4, 0, "filters"));
    await page.locator(".airway-notice", { hasText: "would clog" }).waitFor();
  });
});

describe("the keyboard alone", { timeout: 240_000 }, () => {
  it("moves, adds, sizes and removes sections, moves a day, finds a field, saves, and takes all back", async () => {
    const { page, stored } = await opened();
    // The drawing comes a moment behind the page; before that its sections take no keys.
    await page.getByRole("slider", { name: /clear length/ }).waitFor();
    const before = await stored();
    await page.keyboard.press("ControlOrMeta+k");
    await page.getByRole("combobox", { name: "search and go" }).waitFor();
    await page.keyboard.type("access");
    await page.keyboard.press("Enter");
    await expect.poll(() => sections(page).evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await heading(page).textContent()).toBe("access");

    await page.keyboard.press("Shift+ArrowLeft");
    await expect.poll(async () => (await names(page)).indexOf("access")).toBe(6);
    await page.keyboard.press("Shift+ArrowRight");
    await expect.poll(() => names(page)).toEqual(demoNames);

    await page.keyboard.press("Insert");
    const dialog = page.getByRole("dialog", { name: "add a section" });
    await dialog.waitFor();
    const kind = () => page.evaluate(() => document.activeElement?.querySelector("strong")?.textContent);
    for (let presses = 0; presses < 20 && (await kind()) !== "access"; presses += 1) {
      await page.keyboard.press("ArrowDown");
    }
    await page.keyboard.press("Enter");
    await expect.poll(() => names(page)).toEqual(demoNames.toSpliced(8, 0, "access 2"));

    const grip = page.getByRole("slider", { name: "clear length of access 2" });
    const isOn = () => grip.evaluate((element) => element === document.activeElement);
    await sections(page).focus();
    for (let presses = 0; presses < 6 && !(await isOn()); presses += 1) await page.keyboard.press("Tab");
    expect(await isOn()).toBe(true);
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Shift+ArrowRight");
    await expect.poll(() => grip.getAttribute("aria-valuetext")).toBe("37 in");

    const day = page.getByRole("slider", { name: "wet-bulb day on the chart" });
    await day.focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => day.getAttribute("aria-valuetext")).toBe("88.5 °F, wet bulb 81 °F");

    await page.keyboard.press("ControlOrMeta+k");
    await page.keyboard.type("motor power");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("INPUT");
    await page.keyboard.press("ControlOrMeta+a");
    await page.keyboard.type("40 hp");
    await page.keyboard.press("Enter");

    await save(page);
    const text = await stored();
    for (const words of ["name: access 2", "length: 37 in", "dry bulb: 88.5 °F", "motor power: 40 hp"]) {
      expect(text).toContain(words);
    }
    await sections(page).focus();
    for (let steps = 0; steps < 40 && !(await undo(page).isDisabled()); steps += 1) {
      await page.keyboard.press("ControlOrMeta+z");
    }
    await expect.poll(() => names(page)).toEqual(demoNames);
    await save(page);
    expect(await stored()).toBe(before);
  });

  it("has its keys on a page of their own", async () => {
    const { page } = await opened();
    await sections(page).focus();
    await page.keyboard.press("?");
    const sheet = page.getByRole("dialog", { name: "keys of the page" });
    await sheet.waitFor();
    expect(await sheet.textContent()).toContain("search and go");
    await page.keyboard.press("Escape");
    await sheet.waitFor({ state: "detached" });
  });
});

describe("design days", { timeout: 240_000 }, () => {
  it("are carried on the chart and written as the job tells them; a click sees the machine on that day", async () => {
    const { page, stored } = await opened();
    const before = await stored();
    const day = page.getByRole("slider", { name: "dry-bulb day on the chart" });
    await day.scrollIntoViewIfNeeded();
    const box = (await day.boundingBox())!;
    await page.mouse.move(box.x + 12, box.y + 12);
    await page.mouse.down();
    await page.mouse.move(box.x + 30, box.y + 16, { steps: 3 });
    const words = (await day.getAttribute("aria-valuetext"))!;
    expect(words).toMatch(/^[\d.]+ °F, wet bulb [\d.]+ °F$/);
    await page.mouse.up();
    await save(page);
    const [dryBulb, wetBulb] = words.split(", wet bulb ");
    expect(await stored()).toBe(
      before.replace("{ dry bulb: 94 °F, wet bulb: 78 °F }", `{ dry bulb: ${dryBulb}, wet bulb: ${wetBulb} }`),
    );
    await page.getByRole("slider", { name: "winter on the chart" }).click();
    const chart = page.getByRole("img", { name: /Psychrometric chart/ });
    await expect.poll(() => chart.getAttribute("aria-label")).toContain("winter");
  });
});

describe("manners", { timeout: 240_000 }, () => {
  it("notices a file that another hand has changed: taken where the bench is clean, told where it is not", async () => {
    const { page, stored, store } = await opened();
    const text = await stored();
    const turnTo = () => page.evaluate(() => window.dispatchEvent(new Event("focus")));
    await store(text.replace("tag: MA-2", "tag: MA-3"));
    await turnTo();
    await page.getByRole("heading", { level: 1, name: "MA-3" }).waitFor();
    expect(await page.locator(".file-words").textContent()).not.toContain("not saved");
    await undo(page).click();
    await page.getByRole("heading", { level: 1, name: "MA-2" }).waitFor();
    expect(await page.locator(".file-words").textContent()).toContain("not saved");
    await store(text.replace("tag: MA-2", "tag: MA-4"));
    await turnTo();
    await page.locator(".airway-notice", { hasText: "has changed on the disk" }).waitFor();
    await page.getByRole("heading", { level: 1, name: "MA-2" }).waitFor();
  });

  it("moves air only for people who want motion, and lets it stand", async () => {
    const { page } = await opened();
    expect(await page.locator(".air-motion").isVisible()).toBe(false);
    await page.emulateMedia({ reducedMotion: "no-preference" });
    await page.locator(".air-motion").waitFor();
    await page.getByRole("button", { name: "air moves" }).click();
    await page.locator(".air-motion").waitFor({ state: "detached" });
  });

  it("prints a head on its sheets, and nothing that only a hand can use", async () => {
    const { page } = await opened();
    await page.getByRole("region", { name: "findings" }).getByRole("listitem").first().waitFor({ timeout: 120_000 });
    await page.emulateMedia({ media: "print" });
    await page.locator(".sheet-head", { hasText: "MA-2" }).waitFor();
    for (const hand of [
      ".section-strip",
      ".airway-hands",
      ".day-handles",
      ".take-away",
      ".header-bar",
      ".flag-strip",
    ]) {
      for (const each of await page.locator(hand).all()) expect(await each.isVisible(), hand).toBe(false);
    }
    expect(await page.locator("section.airway svg").first().isVisible()).toBe(true);
    expect(await page.getByRole("img", { name: /Psychrometric chart/ }).isVisible()).toBe(true);
    const sheets = await page.pdf({ format: "A4", landscape: true });
    // Machine, part in hand, chart, what is found.
    const count = sheets.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(count).toBeGreaterThanOrEqual(4);
    expect(count).toBeLessThanOrEqual(9);
  });
});
