import axe from "axe-core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { servedPages } from "./served-page.test-data.ts";

const opened = servedPages();

/** W3C, Web Content Accessibility Guidelines 2.2, levels A and AA, as far as axe-core can tell by itself. */
const guidelines = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/**
 * Design days stand on the chart where they are, however near to one another: success criterion 2.5.8 excepts targets whose
 * place is what they tell, and those that another control of the page does the work of (the duty's own fields).
 */
const excepted = { rule: "target-size", html: 'class="day-handle' };

/** What speaks against the page as it stands; in the dark only colours are other than in the light. */
async function violations(page: Page, only: "all" | "colours"): Promise<readonly string[]> {
  const options: axe.RunOptions = {
    resultTypes: ["violations"],
    ...(only === "all"
      ? { runOnly: { type: "tag", values: guidelines }, rules: { "target-size": { enabled: true } } }
      : { runOnly: { type: "rule", values: ["color-contrast", "link-in-text-block"] } }),
  };
  const found = await page.evaluate(
    (asked) => (window as unknown as { axe: typeof axe }).axe.run(document, asked),
    options,
  );
  return found.violations.flatMap(({ id, nodes }) =>
    nodes
      .filter(({ html }) => id !== excepted.rule || !html.includes(excepted.html))
      .map(({ target, html, failureSummary }) => `${id}: ${target} ${html.slice(0, 160)} ${failureSummary}`),
  );
}

/**
 * Words of the pictures against the paper, which the tool passes over. WCAG 2.2, success criterion 1.4.3: 4.5 to 1; the
 * relative luminance as its glossary defines it.
 */
function faintPictureWords(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const partsOf = (colour: string) => (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
    const luminance = (colour: string) => {
      const [red = 0, green = 0, blue = 0] = partsOf(colour).map((part) =>
        part / 255 <= 0.04045 ? part / 255 / 12.92 : ((part / 255 + 0.055) / 1.055) ** 2.4,
      );
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const paper = luminance(getComputedStyle(document.documentElement).backgroundColor);
    const faint = new Set<string>();
    for (const word of document.querySelectorAll("svg text")) {
      const ink = luminance(getComputedStyle(word).fill);
      const contrast = (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
      if (contrast < 4.5)
        faint.add(`faint: ${word.getAttribute("class")} "${word.textContent}" ${contrast.toFixed(2)}`);
    }
    return [...faint];
  });
}

/** The view in the light and in the dark. */
async function scan(page: Page, view: string): Promise<void> {
  await page.emulateMedia({ colorScheme: "light" });
  await page.evaluate(axe.source);
  expect.soft([...(await violations(page, "all")), ...(await faintPictureWords(page))], view).toEqual([]);
  await page.emulateMedia({ colorScheme: "dark" });
  expect
    .soft([...(await violations(page, "colours")), ...(await faintPictureWords(page))], `${view}, dark`)
    .toEqual([]);
}

/** ms that a busy machine may take for what is worked in the background. */
const patience = { timeout: 120_000 };
const part = (page: Page) => page.getByRole("combobox", { name: "part in hand" });
const machine = (page: Page) => page.getByRole("group", { name: "view of the machine" });

describe("no guideline is violated, in light and dark,", { timeout: 600_000 }, () => {
  it("on the bench, by each part in hand, with findings, workings and prices open", async () => {
    const { page } = await opened();
    const findings = page.getByRole("region", { name: "findings", exact: true });
    await findings.getByRole("listitem").first().waitFor(patience);
    await page.getByText(/over 16 conditions/).waitFor(patience);
    await scan(page, "bench");
    const row = findings.locator("li.finding", { hasText: "coil height over a pan" });
    await row.getByRole("button", { name: /coil height/ }).click();
    await row.getByText("It protects").waitFor(patience);
    await row.getByRole("button", { name: "let it go, by name and reason" }).click();
    const hand = page.getByRole("complementary", { name: "part in hand" });
    await hand.getByRole("button", { name: /^latent capacity/ }).click();
    await page.getByRole("button", { name: "by section and option" }).click();
    await page.getByRole("table", { name: "price and mass by section" }).waitFor();
    await scan(page, "finding, working and prices");
    for (const label of ["fan", "preheat coil", "filters", "duty", "cabinet"]) {
      await part(page).selectOption({ label });
      await hand.getByRole("heading", { level: 2, name: label }).waitFor();
      await scan(page, label);
    }
  });

  it("in plan, ends and three dimensions, in the alternatives and in the year", async () => {
    const { page } = await opened();
    for (const [view, name] of [
      ["plan", "Plan"],
      ["ends", "End views"],
    ] as const) {
      await machine(page).getByText(view, { exact: true }).click();
      await page.getByRole("img", { name }).waitFor(patience);
      await scan(page, view);
    }
    await machine(page).getByText("3D").click();
    await page.getByRole("application", { name: /three dimensions/ }).waitFor(patience);
    await page.getByText("the machine in words").click();
    await scan(page, "3D");
    await machine(page).getByText("side").click();
    await part(page).selectOption({ label: "cooling coil" });
    await page.getByRole("button", { name: /Other coils/ }).click();
    const table = page.getByRole("region", { name: "table of alternatives" });
    await table.waitFor(patience);
    await page.getByText("limits", { exact: true }).click();
    await scan(page, "alternatives");
    await page.getByRole("button", { name: /Every hour of the year/ }).click();
    await page.getByRole("img", { name: /Leaving air/ }).waitFor(patience);
    await scan(page, "year");
  });

  it("on each sheet that lies over the page", async () => {
    const { page } = await opened();
    const sheets: readonly (readonly [opener: string | RegExp, dialog: string, ready: string | RegExp])[] = [
      ["open", "open a job", "marine-biology-wing.yaml"],
      ["new", "A new unit", "The worst days"],
      [/^search and go/, "search and go", "louver"],
      ["keys", "keys of the page", "In a field"],
      ["tour", "tour of the page", "The machine is the page"],
      ["help", "help", "Duty"],
      [/^variants/, "variants", /keep the job/],
      [/^add a section between/, "add a section", "moisture eliminator"],
    ];
    for (const [opener, name, ready] of sheets) {
      const button = page.getByRole(
        "button",
        typeof opener === "string" ? { name: opener, exact: true } : { name: opener },
      );
      await button.first().click();
      const sheet = page.getByRole("dialog", { name });
      await sheet.getByText(ready).first().waitFor(patience);
      await scan(page, name);
      await page.keyboard.press("Escape");
      await sheet.waitFor({ state: "detached" });
    }
    await page.getByRole("textbox", { name: "job text" }).waitFor();
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "fan" });
    const diameter = page.getByLabel("diameter", { exact: true });
    await diameter.fill("32 apples");
    await diameter.press("Enter");
    await page.getByRole("button", { name: "steps" }).or(page.getByText("apples")).first().waitFor();
    await scan(page, "a value that is refused");
  });
});
