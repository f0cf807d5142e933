import { describe, expect, it } from "vitest";
import { servedPages } from "./served-page.test-data.ts";

const opened = servedPages();

/** ms that a busy machine may take to answer an edit. */
const patience = { timeout: 20_000 };

describe("price and mass", () => {
  it("stand in sight, change with an edit, and say by how much; undo brings them back", async () => {
    const { page, complaints } = await opened();
    const bar = page.getByRole("region", { name: "price and mass" });
    const price = bar.locator(".order-price strong");
    await price.waitFor();
    const before = await price.textContent();
    expect(before).toMatch(/^\$\d+,\d{3}$/);
    await page.getByRole("combobox", { name: "part in hand" }).selectOption({ label: "cabinet" });
    const thickness = page.getByLabel("panel thickness", { exact: true });
    await thickness.fill("3 in");
    await thickness.press("Enter");
    const act = bar.getByRole("status", { name: "what the last edit changed" });
    await expect.poll(() => act.textContent(), patience).toMatch(/^\+\$[\d,]+panel thickness 3 in$/);
    expect(await price.textContent()).not.toBe(before);
    const said = Number((await act.locator("strong").textContent())?.replace(/[^\d]/g, ""));
    const whole = (text: string | null) => Number(text?.replace(/[^\d]/g, ""));
    // Both prices are rounded to the dollar.
    expect(Math.abs(whole(await price.textContent()) - whole(before) - said)).toBeLessThanOrEqual(1);
    await page.getByRole("button", { name: "undo" }).click();
    await expect.poll(() => price.textContent(), patience).toBe(before);
    expect(complaints).toEqual([]);
  });

  it("are told by section, and an option that is taken is an edit of the job", async () => {
    const { page } = await opened();
    const bar = page.getByRole("region", { name: "price and mass" });
    await bar.getByRole("button", { name: "by section and option" }).click();
    const table = bar.getByRole("table", { name: "price and mass by section" });
    await table.getByRole("button", { name: "fan", exact: true }).click();
    const panel = page.getByRole("complementary", { name: "part in hand" });
    expect(await panel.getByRole("heading", { level: 2 }).textContent()).toBe("fan");
    const row = await table.getByRole("row", { name: /^fan / }).textContent();
    const own = await panel.getByRole("region", { name: "price and mass of the part" }).locator("strong").first();
    expect(row).toContain(await own.textContent());
    const price = bar.locator(".order-price strong");
    const before = await price.textContent();
    await bar.getByRole("checkbox", { name: /witnessed factory test/ }).check();
    await expect.poll(() => price.textContent(), patience).not.toBe(before);
    expect(await bar.locator(".last-act").textContent()).toContain("+$4,800");
    await page.getByRole("textbox", { name: "job text" }).waitFor();
    expect(await page.locator(".file-words").textContent()).toContain("not saved");
  });
});

describe("the machine on sheets", () => {
  it("shows plan and ends when they are asked for, in the units in hand", async () => {
    const { page, complaints } = await opened();
    const views = page.getByRole("group", { name: "view of the machine" });
    await views.getByText("plan", { exact: true }).click();
    const plan = page.getByRole("img", { name: "Plan" });
    await plan.waitFor(patience);
    const words = () => plan.locator("text").allTextContents();
    expect(await words()).toContainEqual(expect.stringMatching(/^coil pull .*″$/));
    await page.getByText("SI", { exact: true }).click();
    await expect.poll(words, patience).toContainEqual(expect.stringMatching(/^coil pull \d+$/));
    await views.getByText("ends", { exact: true }).click();
    await page.getByRole("img", { name: "End views" }).waitFor(patience);
    await views.getByText("side", { exact: true }).click();
    await page.getByRole("listbox", { name: "sections in airflow order" }).waitFor();
    expect(complaints).toEqual([]);
  });
});

describe("the machine in three dimensions", () => {
  it("comes when it is asked for, is picked by pointer and keys, rests when still, and gives the place back", async () => {
    const { page, complaints } = await opened();
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.getByRole("group", { name: "view of the machine" }).getByText("3D").click();
    const scene = page.getByRole("application", { name: /three dimensions/ });
    await scene.waitFor();
    expect(asked.some((url) => url.includes("solid-canvas"))).toBe(true);
    const heading = page.getByRole("complementary", { name: "part in hand" }).getByRole("heading", { level: 2 });
    expect(await heading.textContent()).toBe("cooling coil");
    await scene.focus();
    await page.keyboard.press("PageDown");
    expect(await heading.textContent()).toBe("access");
    // From the right at half height the hood stands at the left end of the machine, where the air comes in.
    await page.getByRole("button", { name: "from the right" }).click();
    await page.waitForTimeout(300);
    const box = (await scene.boundingBox())!;
    await page.mouse.click(box.x + 0.1 * box.width, box.y + box.height / 2);
    await expect.poll(() => heading.textContent(), patience).toBe("intake hood");
    await page.waitForTimeout(600);
    await page.mouse.click(box.x + 3, box.y + 3);
    const frames = await scene.getAttribute("data-frames");
    await page.waitForTimeout(600);
    await page.mouse.click(box.x + 3, box.y + 3);
    // Waiting and a click beside the machine draw nothing.
    expect(await scene.getAttribute("data-frames")).toBe(frames);
    await page.getByText("the machine in words").click();
    expect(await page.locator(".solid-text li").allTextContents()).toContainEqual(expect.stringMatching(/^fan.*wheel/));
    await page.getByRole("group", { name: "view of the machine" }).getByText("side").click();
    await page.getByRole("listbox", { name: "sections in airflow order" }).waitFor();
    expect(complaints.filter((words) => !/GPU stall|software WebGL/i.test(words))).toEqual([]);
  });

  it("opens and cuts the machine, in light and dark", async () => {
    const { page } = await opened();
    await page.getByRole("group", { name: "view of the machine" }).getByText("3D").click();
    const scene = page.getByRole("application", { name: /three dimensions/ });
    await scene.waitFor();
    const look = async () => (await scene.screenshot()).toString("base64");
    await page.waitForTimeout(400);
    const open = await look();
    await page.getByLabel("hide the casing").uncheck();
    await page.waitForTimeout(200);
    const closed = await look();
    expect(closed).not.toBe(open);
    await page.getByLabel("cut along the airway").fill("0.5");
    await page.waitForTimeout(200);
    const cut = await look();
    expect(cut).not.toBe(closed);
    await page.getByRole("button", { name: /light and dark/ }).click();
    await page.getByRole("button", { name: "light", exact: true }).click();
    await page.waitForTimeout(200);
    expect(await look()).not.toBe(cut);
  });
});
