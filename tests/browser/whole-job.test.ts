import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { servedPages } from "./served-page.test-data.ts";

const opened = servedPages();

/** ms that a busy machine may take to size, to judge and to look for fixes. */
const patience = { timeout: 180_000 };
const undo = (page: Page) => page.getByRole("button", { name: "undo", exact: true });
const sections = (page: Page) => page.getByRole("listbox", { name: "sections in airflow order" });
const names = (page: Page) =>
  sections(page)
    .getByRole("option")
    .evaluateAll((options) => options.map((each) => each.getAttribute("aria-label")?.split(", ")[0] ?? ""));
const price = (page: Page) => page.getByRole("region", { name: "price and mass" }).locator(".order-price strong");
const fileWords = (page: Page) => page.locator(".file-words").textContent();

/** A hand that counts: a click is one action, and so is a field filled in and taken over by Enter. */
class CountingHand {
  actions = 0;

  async click(what: Locator, options: Parameters<Locator["click"]>[0] = {}): Promise<void> {
    this.actions += 1;
    await what.click(options);
  }

  async say(field: Locator, value: string): Promise<void> {
    this.actions += 1;
    await field.fill(value);
    await field.press("Enter");
  }
}

// Place, people and numbers are invented.
const answers: readonly (readonly [leaf: string, field: string, value: string])[] = [
  ["The air", "tag", "AHU-7"],
  ["The air", "design", "9000 cfm"],
  ["The worst days", "altitude", "640 ft"],
  ["The worst days", "hottest: dry bulb", "93 °F"],
  ["The worst days", "hottest: wet bulb", "75 °F"],
  ["The worst days", "highest wet bulb: dry bulb", "88 °F"],
  ["The worst days", "highest wet bulb: wet bulb", "78 °F"],
  ["The worst days", "highest dew point: dry bulb", "83 °F"],
  ["The worst days", "highest dew point: dew point", "75 °F"],
  ["The worst days", "winter: dry bulb", "2 °F"],
  ["The worst days", "winter: relative humidity", "70 %"],
  ["What the laboratories need", "coil leaving", "53 °F"],
  ["What the laboratories need", "winter supply", "60 °F"],
  ["What the laboratories need", "pressure", "2 in.wg"],
];

describe("the ten-minute task", () => {
  it("leads from a blank duty to a checked, priced and saved unit in at most 40 actions, by names alone", async () => {
    const { page, complaints, stored } = await opened();
    const hand = new CountingHand();
    await hand.click(page.getByRole("button", { name: "new", exact: true }));
    const sheet = page.getByRole("dialog", { name: "A new unit" });
    const side = sheet.getByRole("complementary", { name: "how the enquiry stands" });
    await side.getByText("6 answers needed").waitFor();
    for (const [leaf, field, value] of answers) {
      await hand.say(sheet.getByRole("region", { name: leaf }).getByLabel(field, { exact: true }).first(), value);
    }
    await hand.click(sheet.getByRole("button", { name: "there is steam" }));
    await hand.click(sheet.getByRole("button", { name: "there is chilled water" }));
    await hand.click(side.getByRole("button", { name: "size the unit" }));
    await hand.click(side.getByRole("button", { name: "put it on the bench" }), patience);
    await sheet.waitFor({ state: "detached" });
    await expect.poll(() => page.locator(".header-bar h1").textContent()).toBe("AHU-7");

    // Checked: nothing fails, and what is advised is looked at, mended or let go.
    const findings = page.getByRole("region", { name: "findings", exact: true });
    const heading = findings.getByRole("heading", { level: 2 });
    await expect.poll(() => heading.textContent(), patience).toMatch(/\d+ hold/);
    expect(await heading.textContent()).not.toMatch(/fail/);
    const advised = findings.locator("li.finding", { hasText: "advice:" });
    const before = await advised.count();
    expect(before).toBeGreaterThan(0);
    const first = advised.first();
    const rule = (await first.getByRole("button").first().textContent())!;
    await hand.click(first.getByRole("button").first());
    const row = findings.locator("li.finding-open");
    await row.getByText("It protects").waitFor(patience);
    const apply = row.getByRole("button", { name: "apply the fix" });
    await apply.or(row.getByText(/no single (field|change) of the job mends it/)).waitFor(patience);
    if (await apply.isVisible()) {
      await hand.click(apply);
      await expect.poll(() => undo(page).getAttribute("title")).toMatch(/^mend /);
    } else {
      await hand.click(row.getByRole("button", { name: "let it go, by name and reason" }));
      await hand.say(row.getByLabel("who answers for it"), "A. Reviewer");
      await hand.say(row.getByLabel("why it may stay so"), "looked at with the owner");
      await hand.click(row.getByRole("button", { name: "let it go", exact: true }));
    }
    await expect.poll(() => advised.filter({ hasText: rule }).count(), patience).toBe(0);

    expect(await price(page).textContent()).toMatch(/^\$[\d,]+$/);
    await hand.click(page.getByRole("button", { name: "save", exact: true }));
    await page.getByText("saved ahu-7.yaml").waitFor();
    const text = await stored("ahu-7.yaml");
    for (const [, , value] of answers) expect(text).toContain(value);
    expect(text).toContain("kind: fan");
    expect(hand.actions).toBeLessThanOrEqual(40);
    expect(complaints).toEqual([]);
  }, 600_000);
});

describe("a page that dies in the middle of edits", () => {
  it("comes back with all of them, the last included, and undo shows the file", async () => {
    const { page, address, stored } = await opened();
    const text = await stored();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "cabinet" });
    const edits = [
      ["height", "84 in"],
      ["panel thickness", "3 in"],
      ["rail height", "11 in"],
    ] as const;
    for (const [name, value] of edits) {
      const field = page.getByLabel(name, { exact: true });
      await field.fill(value);
      await field.press("Enter");
    }
    const context = page.context();
    const client = await context.newCDPSession(page);
    const died = page.waitForEvent("crash");
    void client.send("Page.crash").catch(() => undefined);
    await died;
    await page.close();
    const again = await context.newPage();
    await again.goto(address);
    await again.getByText(/unsaved text of last time is back/).waitFor();
    await again.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "cabinet" });
    for (const [name, value] of edits)
      expect(await again.getByLabel(name, { exact: true }).inputValue(), name).toBe(value);
    expect(await stored()).toBe(text);
    await undo(again).click();
    await expect.poll(() => fileWords(again)).not.toContain("not saved");
  });
});

/** Presses Tab until the element has the focus. */
async function tabTo(page: Page, what: Locator, most = 160): Promise<void> {
  const isOn = () => what.evaluate((element) => element === document.activeElement);
  for (let presses = 0; presses < most && !(await isOn()); presses += 1) await page.keyboard.press("Tab");
  expect(await isOn(), String(what)).toBe(true);
}

/** Search and go: the first that is found by a few letters. */
async function go(page: Page, letters: string): Promise<void> {
  await page.keyboard.press("ControlOrMeta+k");
  await page.getByRole("combobox", { name: "search and go" }).waitFor();
  await page.keyboard.type(letters);
  await page.keyboard.press("Enter");
}

describe("by the keyboard alone", () => {
  it("a section is chosen, edited and removed, another fan is taken, a finding is let go, and all is saved", async () => {
    const { page, stored, complaints } = await opened();
    await page.getByRole("slider", { name: /clear length/ }).waitFor();
    const before = await names(page);
    const tag = () => page.evaluate(() => document.activeElement?.tagName);
    await go(page, "fan");
    const part = page.getByRole("complementary", { name: "part in hand" });
    await part.getByRole("heading", { level: 2, name: "fan", exact: true }).waitFor();
    await go(page, "motor power");
    await expect.poll(tag, patience).toBe("INPUT");
    await page.keyboard.press("ControlOrMeta+a");
    await page.keyboard.type("40 hp");
    await page.keyboard.press("Enter");
    await expect.poll(() => undo(page).getAttribute("title")).toMatch(/motor power/);

    // In a field the keys of undo are the field's own.
    await go(page, "access");
    await expect
      .poll(() => sections(page).evaluate((element) => element === document.activeElement), patience)
      .toBe(true);
    await page.keyboard.press("ControlOrMeta+z");
    await expect.poll(() => undo(page).isDisabled()).toBe(true);
    await page.keyboard.press("Delete");
    await expect.poll(() => names(page)).toEqual(before.filter((name) => name !== "access"));
    await page.keyboard.press("ControlOrMeta+z");
    await expect.poll(() => names(page)).toEqual(before);

    await go(page, "fan");
    const band = page.getByRole("region", { name: "alternatives", exact: true });
    await tabTo(page, band.getByRole("button", { name: /Other fans/ }));
    await page.keyboard.press("Enter");
    const points = band.getByRole("listbox", { name: /points of the plot/ });
    await points.waitFor(patience);
    await tabTo(page, points);
    await page.keyboard.press("End");
    await page.keyboard.press("Enter");
    await expect.poll(() => undo(page).getAttribute("title")).toMatch(/^take /);

    const findings = page.getByRole("region", { name: "findings", exact: true });
    await findings.locator("li.finding", { hasText: "coil height over a pan" }).waitFor(patience);
    const row = part.locator("li.finding", { hasText: "coil height over a pan" });
    await go(page, "coil height over a pan");
    await row.getByText("It protects").waitFor(patience);
    await tabTo(page, row.getByRole("button", { name: "let it go, by name and reason" }));
    await page.keyboard.press("Enter");
    await tabTo(page, row.getByLabel("who answers for it"));
    await page.keyboard.type("A. Reviewer");
    await page.keyboard.press("Tab");
    await page.keyboard.type("the film was looked at");
    await tabTo(page, row.getByRole("button", { name: "let it go", exact: true }));
    await page.keyboard.press("Enter");
    await row.getByText("let go by A. Reviewer").waitFor(patience);
    await page.keyboard.press("ControlOrMeta+s");
    await expect.poll(stored).toMatch(/rule: coil height over a pan\n\s+section: cooling coil\n\s+by: A. Reviewer/);
    expect(complaints).toEqual([]);
  }, 600_000);
});

/** Numbers from 0 to 1 that follow from a seed: the multiplier and modulus of Park and Miller's minimal standard. */
function drawnFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (48_271 * state) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

describe("random edits, undone and done again,", () => {
  it.each([11, 2026])(
    "end where they began once all are taken back (seed %i)",
    async (seed) => {
      const { page, complaints, stored } = await opened();
      await page.getByRole("slider", { name: /clear length/ }).waitFor();
      await price(page).waitFor();
      const text = await stored();
      const start = { names: await names(page), price: await price(page).textContent() };
      const draw = drawnFrom(seed);
      const row = sections(page);
      const press = async (...keys: readonly string[]) => {
        await row.focus();
        for (const key of keys) await page.keyboard.press(key);
      };
      const acts: readonly (() => Promise<void>)[] = [
        () => press("ArrowRight"),
        () => press("ArrowLeft", "ArrowLeft"),
        () => press("Shift+ArrowRight"),
        () => press("Shift+ArrowLeft"),
        () => press("Delete"),
        () => press("Insert", "ArrowDown", "ArrowDown", "Enter"),
        () => press("ControlOrMeta+z"),
        () => press("ControlOrMeta+Shift+z"),
        async () => {
          const grip = page.getByRole("slider", { name: /^clear length/ });
          if ((await grip.count()) === 0) return;
          await grip.focus();
          await page.keyboard.press(draw() < 0.5 ? "ArrowRight" : "Shift+ArrowLeft");
        },
        async () => {
          await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "cabinet" });
          const field = page.getByLabel("panel thickness", { exact: true });
          await field.fill(draw() < 0.5 ? "3 in" : "4 in");
          await field.press("Enter");
        },
      ];
      let steps = 0;
      for (let count = 0; count < 36; count += 1) {
        await acts[Math.floor(draw() * acts.length)]!();
        if (!(await undo(page).isDisabled())) steps += 1;
      }
      expect(steps, "the edits must have changed something").toBeGreaterThan(8);
      for (let count = 0; count < 60 && !(await undo(page).isDisabled()); count += 1) await undo(page).click();
      expect(await undo(page).isDisabled()).toBe(true);
      await expect.poll(() => names(page)).toEqual(start.names);
      expect(await fileWords(page)).not.toContain("not saved");
      await expect.poll(() => price(page).textContent(), patience).toBe(start.price);
      expect(await stored()).toBe(text);
      expect(complaints).toEqual([]);
    },
    300_000,
  );
});
