import { describe, expect, it } from "vitest";
import type { LineItem } from "#section/display";
import type { LedgerLine, PressureLedger } from "#unit/ledger";
import { ledgerChart } from "./ledger-chart.ts";
import { listText } from "./sample-unit.test-data.ts";

function lost(section: string, part: string, pressure: number, more: Partial<LedgerLine> = {}): LedgerLine {
  const plane = { plane: "face", area: 4, velocity: 2.5, density: 1.2, source: "definition" } as const;
  return { section, part, pressure, ...plane, coefficient: pressure / 3.75, behind: 0, ...more };
}

/** A ledger whose every number is known: 20 + 30 + 40 + 250 + 190 + 12 + 600 + 60 + 48 = 1250 Pa. */
const ledger: PressureLedger = {
  lines: [
    lost("intake hood", "opening and turn", 20),
    lost("intake hood", "bird screen", 30),
    lost("mixing box", "outside damper", 40),
    lost("mixing box", "return damper", 35, { isBeside: true }),
    lost("filters", "filter", 250, { span: { of: "filter", least: 150, most: 350, share: 0.5 } }),
    lost("cooling coil", "core", 190, { span: { of: "fins", least: 140, most: 200, share: 0.83 } }),
    lost("fan", "fan inlet: room before it", 12),
    lost("fan", "fan total pressure", -1250, { isFan: true }),
  ],
  intake: 0,
  losses: 542,
  ductSystem: 600,
  reserve: 60,
  velocityPressure: 48,
  endArea: 1.2,
  endVelocity: 9,
  endDensity: 1.19,
  fanTotal: 1250,
  fanOutletVelocityPressure: 90,
  fanStatic: 1160,
};
const list = ledgerChart(ledger, "Pressure ledger", { width: 700, system: "si" });

function bar(key: string): { readonly from: number; readonly to: number } {
  const { points } = list.items.find((item) => item.key === `ledger-${key}`) as LineItem;
  return { from: points[0]!, to: points[2]! };
}

describe("the picture of a pressure ledger", () => {
  it("lays every bar behind the one before, up to the length of the fan's", () => {
    const order = [
      "section-intake hood-0",
      "section-intake hood-1",
      "section-mixing box-0",
      "section-filters-0",
      "section-filters-1",
      "section-cooling coil-0",
      "section-cooling coil-1",
      "section-fan-0",
      "duct-system-0",
      "reserve-0",
      "velocity-pressure-0",
    ];
    const fan = bar("fan-0");
    const scale = (fan.to - fan.from) / 1250;
    const pressures = [20, 30, 40, 150, 100, 140, 50, 12, 600, 60, 48];
    order.forEach((key, index) => {
      const { from, to } = bar(key);
      expect(from, key).toBeCloseTo(index === 0 ? fan.from : bar(order[index - 1]!).to, 6);
      expect((to - from) / scale, key).toBeCloseTo(pressures[index]!, 6);
    });
    expect(bar("velocity-pressure-0").to).toBeCloseTo(fan.to, 6);
  });

  it("leaves out what lies beside the path, and a reserve that is none", () => {
    const labels = list.items.flatMap((item) => item.label ?? []);
    expect(labels.some((label) => label.includes("return damper"))).toBe(false);
    expect(labels).toContain("filter, dust: 100 Pa");
    expect(labels).toContain("core, water on the fins: 50 Pa");
    const bare = ledgerChart({ ...ledger, reserve: 0 }, "", { width: 700, system: "ip" });
    expect(bare.items.some((item) => item.key.startsWith("ledger-reserve"))).toBe(false);
    expect(bare.items.length).toBeGreaterThan(40);
  });

  it("shows wind as what helps the fan, before all else", () => {
    const windy = ledgerChart({ ...ledger, intake: 25, fanTotal: 1225 }, "", { width: 700, system: "si" });
    const points = (key: string) => (windy.items.find((item) => item.key === `ledger-${key}`) as LineItem).points;
    expect(points("wind-0")[2]).toBeCloseTo(points("fan-0")[0]!, 6);
    expect(points("velocity-pressure-0")[2]).toBeCloseTo(points("fan-0")[2]!, 6);
  });

  it("keeps every item in its box, under a key of its own", () => {
    expect(new Set(list.items.map((item) => item.key)).size).toBe(list.items.length);
    for (const item of list.items) {
      if (item.shape !== "line") continue;
      item.points.forEach((value, index) => {
        expect(value, item.key).toBeGreaterThanOrEqual(0);
        expect(value, item.key).toBeLessThanOrEqual(index % 2 === 0 ? list.box.width : list.box.height);
      });
    }
  });

  it("stays as it was drawn", async () => {
    await expect(listText(list)).toMatchFileSnapshot("./ledger-chart.list.txt");
  });
});
