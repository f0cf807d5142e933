import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RecordHead } from "#component/family";
import { fanWheelFamily } from "#component/fan-wheel";
import cases from "../../../../../reference/cases/fans.json" with { type: "json" };
import type { SectionCondition } from "../contract.ts";
import { rateSection } from "../rate-section.ts";
import { sampleAir, sampleSectionCondition } from "../sample.test-data.ts";
import { shippedCatalogue, valuesOfText } from "../shipped.test-data.ts";
import { enthalpyFlow, waterFlow } from "../station.ts";
import type { FanDesign } from "./design.ts";
import { fanFields } from "./fields.ts";
import { fan } from "./kind.ts";
import { createFanRating, type FanSectionRating } from "./rate.ts";
import { fanSpeedForPressure } from "./rise.ts";
import { fanMadeSound } from "./sound.ts";

const frame = { width: 3, height: 2.6, hand: "right" } as const;

function designOf(text: string): FanDesign {
  return fan.prepare(valuesOfText(fanFields, text), frame);
}

function rated(design: FanDesign, flow: number, at: SectionCondition, changes = {}): FanSectionRating {
  const out = createFanRating();
  rateSection(fan, design, sampleAir(at.condition, flow, changes), at, out);
  return out;
}

const designs = [
  "diameter: 33 in\nmotor power: 25 hp",
  "wheel: typical airfoil housed single inlet\ndiameter: 40.25 in\nmotor power: 25 hp\nmotors in airstream: no\ndischarge: up",
  "diameter: 24.5 in\ncount: 2\nmotor power: 15 hp\nspeed controlled: no\nfixed speed: 1300 rpm\noutlet duct: 4 ft",
  "wheel: typical airfoil plenum wheel\ndiameter: 22.25 in\ncount: 6\nmotor power: 7.5 hp\nbackdraft dampers: yes",
].map(designOf);

const points = fc.record({
  design: fc.constantFrom(...designs),
  flow: fc.double({ min: 0.05, max: 15, noNaN: true }),
  speed: fc.double({ min: 0, max: 35, noNaN: true }),
  running: fc.boolean(),
  dryBulb: fc.double({ min: -35, max: 40, noNaN: true }),
  relativeMoisture: fc.double({ min: 0, max: 1, noNaN: true }),
  freeLiquid: fc.constantFrom(0, 0, 0.002, 0.05),
  barometricPressure: fc.double({ min: 70_000, max: 104_000, noNaN: true }),
  suction: fc.double({ min: -3000, max: 0, noNaN: true }),
});

describe("fan section", () => {
  it("keeps dry air, water, energy and total pressure to 1e-9", () => {
    fc.assert(
      fc.property(points, (point) => {
        const at = sampleSectionCondition(
          { barometricPressure: point.barometricPressure },
          { fanSpeed: point.speed, fansRunning: point.running },
        );
        const { entering, leaving, ...out } = rated(point.design, point.flow, at, {
          dryBulb: point.dryBulb,
          coldestFilament: point.dryBulb - 3,
          humidityRatio: 0.0003 + 0.01 * point.relativeMoisture * (point.dryBulb > 15 ? 1 : 0.05),
          freeLiquid: point.freeLiquid,
          staticPressure: point.suction,
          totalPressure: point.suction + 4,
        });
        const scale = Math.abs(enthalpyFlow(entering)) + out.heatToAir + 1;
        expect(leaving.dryAirFlow).toBe(entering.dryAirFlow);
        expect(Math.abs(waterFlow(leaving) - waterFlow(entering) - out.waterToAir)).toBeLessThan(1e-9);
        expect(Math.abs(enthalpyFlow(leaving) - enthalpyFlow(entering) - out.heatToAir)).toBeLessThan(1e-9 * scale);
        expect(leaving.totalPressure).toBeCloseTo(entering.totalPressure - out.totalPressureLoss, 9);
        expect(leaving.coldestFilament).toBeLessThanOrEqual(leaving.dryBulb);
        for (const value of Object.values(out)) expect(Number.isFinite(value)).toBe(true);
        expect(out.electricPower).toBeGreaterThanOrEqual(out.heatToAir - 1e-9);
      }),
      { numRuns: 400 },
    );
  });

  it("finds directly the speed whose rating adds the pressure wanted", () => {
    fc.assert(
      fc.property(points, fc.double({ min: -200, max: 2500, noNaN: true }), (point, rise) => {
        const still = rated(point.design, point.flow, sampleSectionCondition({}, { fanSpeed: 0 }));
        const volume = still.flowPerFan * point.design.count;
        const speed = fanSpeedForPressure(point.design, volume, rise, still.density);
        const out = rated(point.design, point.flow, sampleSectionCondition({}, { fanSpeed: speed }));
        if (speed === 0) expect(out.totalPressureRise).toBeGreaterThanOrEqual(rise - 1e-9);
        else
          expect(Math.abs(out.totalPressureRise - rise)).toBeLessThan(
            1e-6 * (Math.abs(rise) + out.peakPressure) + 1e-5,
          );
      }),
      { numRuns: 300 },
    );
  });

  it("shows workings that come to the very figures, running and standing", () => {
    for (const design of designs) {
      for (const fanSpeed of [0, 14.7, 22]) {
        const out = rated(design, 7, sampleSectionCondition({}, { fanSpeed }));
        for (const line of fan.working) {
          const got = line.evaluate(out, design);
          const shown = out[line.figure] as number;
          expect(Math.abs(got - shown), line.figure).toBeLessThanOrEqual(1e-12 * Math.abs(shown));
        }
      }
    }
  });

  // Fan heat as the trade reckons it: 0.369 °F for each in.wg of total pressure over total efficiency, at standard density
  // (4 in.wg at 65 % gives 2.27 °F). One percent covers its rounded specific heat and density.
  it("warms the air by 0.369 °F per in.wg over total efficiency", () => {
    const design = designOf("diameter: 33 in\nmotor power: 25 hp\nmotors in airstream: no");
    const at = sampleSectionCondition({ barometricPressure: 101_325 }, { fanSpeed: 18 });
    const out = rated(design, 9.2, at, { dryBulb: 21.1, coldestFilament: 21.1, humidityRatio: 0 });
    const expected = (0.369 * (out.fanTotalPressure / 249.09)) / out.totalEfficiency;
    expect(Math.abs((out.temperatureRise * 1.8) / expected - 1)).toBeLessThan(0.01);
  });

  // A published field supply fan (Englander & Norford 1992) as a shop would enter it: its table comes back, and between
  // its points the curve stays between them. Its diameter is not published; similarity makes any value do.
  it("gives a published field fan's table back through a record of tested points", () => {
    const table = cases.fan_curves.curves.EnglanderNorford1992;
    const typical = shippedCatalogue.component(
      "fan wheel",
      "typical airfoil housed double inlet",
    ) as FanDesign["wheel"];
    const head: RecordHead = { ...typical.head, name: "field fan", basis: "published" };
    const wheel = fanWheelFamily.build(
      {
        ...typical,
        performance: {
          kind: "tested points",
          testDiameter: 1.5,
          testSpeed: 12,
          testDensity: 1.2,
          stableShare: 0.5,
          points: table.map((point) => ({ flow: point.V_m3_s, staticPressure: point.dp_Pa, shaftPower: point.P_W })),
        },
      },
      head,
    );
    const roomy = { ...frame, width: 6, height: 4.5 };
    const values = valuesOfText(fanFields, "diameter: 1.5 m\nmotor power: 60 hp");
    const design = fan.prepare({ ...values, wheel }, roomy);
    const at = sampleSectionCondition({}, { fanSpeed: 12 });
    for (const point of table.slice(0, -1)) {
      const out = rated(design, point.V_m3_s * 1.15, at);
      const exact = rated(design, (point.V_m3_s * 1.15 * point.V_m3_s) / out.flowPerFan, at);
      expect(exact.flowPerFan).toBeCloseTo(point.V_m3_s, 9);
      expect(exact.staticPressure * (1.2 / exact.density)).toBeCloseTo(point.dp_Pa, 6);
      expect(exact.shaftPower * (1.2 / exact.density)).toBeCloseTo(point.P_W, 5);
      expect(exact.staticEfficiency).toBeCloseTo(point.eta, 3);
    }
  });

  it("takes pressure and gives no heat when it stands, with the square of flow", () => {
    for (const design of designs) {
      const at = sampleSectionCondition(
        { flow: { mode: "fan stopped", dampers: "as set", stackHeight: 10 } },
        { fanSpeed: 20, fansRunning: false },
      );
      const one = rated(design, 1, at);
      const two = rated(design, 2, at);
      expect(one.totalPressureLoss).toBeGreaterThan(0);
      // Density at the entry is the same, so the square law holds to rounding.
      expect(two.totalPressureLoss / one.totalPressureLoss).toBeCloseTo(4, 9);
      expect(one.heatToAir + one.electricPower + one.shaftPower).toBe(0);
      expect(one.leaving.dryBulb).toBe(one.entering.dryBulb);
      expect(fan.notes!(design, one, at).length).toBeGreaterThan(0);
    }
  });

  it("says what is not held: motor, class, steady flow, springs", () => {
    const [housed, , , array] = designs as [FanDesign, FanDesign, FanDesign, FanDesign];
    const fast = sampleSectionCondition({}, { fanSpeed: 34 });
    expect(
      fan.shortfalls!(housed, rated(housed, 10, fast), fast)
        .map((each) => each.what)
        .join(),
    ).toMatch(/motor.*class/);
    const slow = sampleSectionCondition({}, { fanSpeed: 3 });
    const words = (design: FanDesign, flow: number, at: SectionCondition) =>
      fan.notes!(design, rated(design, flow, at), at)
        .map((each) => each.what)
        .join();
    expect(words(housed, 2, slow)).toMatch(/springs/);
    expect(words(housed, 2, sampleSectionCondition({}, { fanSpeed: 20 }))).toMatch(/surge/);
    expect(words(array, 14, sampleSectionCondition({}, { fanSpeed: 10 }))).toMatch(/extended/);
    const good = sampleSectionCondition({}, { fanSpeed: 16 });
    expect(fan.shortfalls!(housed, rated(housed, 8.6, good), good)).toEqual([]);
  });

  it("lets a thinner air take less power at the same flow of volume and speed", () => {
    const design = designs[0]!;
    const sea = rated(design, 9, sampleSectionCondition({}, { fanSpeed: 18 }), { humidityRatio: 0.01 });
    const high = rated(design, 7.2, sampleSectionCondition({ barometricPressure: 81_060 }, { fanSpeed: 18 }), {
      humidityRatio: 0.01,
    });
    // Four fifths of pressure and of mass flow: the same volume, all else in proportion to density.
    expect(high.flowPerFan).toBeCloseTo(sea.flowPerFan, 2);
    expect(high.staticPressure / sea.staticPressure).toBeCloseTo(high.density / sea.density, 3);
    expect(high.shaftPower / sea.shaftPower).toBeCloseTo(high.density / sea.density, 3);
    expect(high.motorAllowed).toBeLessThan(sea.motorAllowed);
  });
});

describe("sound of the fans", () => {
  it("is that of one fan and ten times the logarithm of their number, and none when they stand", () => {
    const one = designOf("wheel: typical airfoil plenum wheel\ndiameter: 22.25 in\nmotor power: 7.5 hp");
    const six = designOf("wheel: typical airfoil plenum wheel\ndiameter: 22.25 in\ncount: 6\nmotor power: 7.5 hp");
    const at = sampleSectionCondition({}, { fanSpeed: 30 });
    const quiet = fanMadeSound(one, rated(one, 1.6, at))!;
    const loud = fanMadeSound(six, rated(six, 9.6, at))!;
    quiet.downstream.forEach((level, band) => {
      expect(loud.downstream[band]! - level).toBeCloseTo(10 * Math.log10(6), 6);
    });
    expect(loud.tone).toBeCloseTo(270, 9);
    expect(fanMadeSound(one, rated(one, 1.6, sampleSectionCondition({}, { fanSpeed: 0 })))).toBeUndefined();
  });
});

describe("picture of a fan", () => {
  it("stays in its section, with keys of its own and finite places", () => {
    for (const design of designs) {
      const items = fan.picture(design, frame, "supply fan");
      const length = fan.layout(design, frame).length * 1000;
      expect(new Set(items.map((item) => item.key)).size).toBe(items.length);
      for (const item of items) {
        const points = item.shape === "line" ? item.points : [item.x, item.y];
        points.forEach((value, index) => {
          const most = index % 2 === 0 ? length : frame.height * 1000;
          expect(value, item.key).toBeGreaterThanOrEqual(-20);
          expect(value, item.key).toBeLessThanOrEqual(most + 60);
        });
      }
      const parts = new Set(items.map((item) => item.reference.part));
      for (const part of ["wheel", "blades", "motor", "springs"]) expect(parts, part).toContain(part);
    }
  });
});
