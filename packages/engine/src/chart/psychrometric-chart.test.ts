import { describe, expect, it } from "vitest";
import { standardPressure } from "#fluid/atmosphere";
import { enthalpyFromHumidityRatio, relativeHumidityFromHumidityRatio, specificVolume } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import { wetBulbFromHumidityRatio } from "#fluid/wet-bulb";
import { fromDisplay } from "#quantity/print";
import type { DisplayList, LineItem } from "#section/display";
import type { AirPath } from "./air-path.ts";
import { psychrometricChart } from "./psychrometric-chart.ts";
import { type PsychrometricFrame, psychrometricFrame } from "./psychrometric-frame.ts";

const size = { width: 560, height: 420 };
const summer: AirPath = {
  key: "wet-bulb-day",
  name: "wet-bulb day",
  season: "cooling",
  states: [
    { name: "outside air", section: undefined, dryBulb: 33, humidityRatio: 0.0205 },
    { name: "mixed air", section: "mixing box", dryBulb: 31.5, humidityRatio: 0.0188 },
    { name: "after cooling coil", section: "cooling coil", dryBulb: 11.4, humidityRatio: 0.0083 },
  ],
};

/** The way back from a point of the page to a state. */
function stateAt(frame: PsychrometricFrame, x: number, y: number) {
  return {
    dryBulb: frame.coldest + ((x - frame.left) / (frame.right - frame.left)) * (frame.warmest - frame.coldest),
    humidityRatio: ((frame.bottom - y) / (frame.bottom - frame.top)) * frame.wettest,
  };
}

function pointsOf(list: DisplayList, key: string, frame: PsychrometricFrame) {
  const item = list.items.find((each) => each.key === key) as LineItem;
  expect(item, key).toBeDefined();
  return Array.from({ length: item.points.length / 2 }, (_, index) =>
    stateAt(frame, item.points[2 * index]!, item.points[2 * index + 1]!),
  );
}

describe.each([
  { system: "ip", altitude: 0 },
  { system: "ip", altitude: 2000 },
  { system: "si", altitude: 0 },
  { system: "si", altitude: 2000 },
] as const)("psychrometric chart in $system at $altitude m", ({ system, altitude }) => {
  const pressure = standardPressure(altitude);
  const frame = psychrometricFrame(pressure, system, summer.states, size);
  const list = psychrometricChart({ pressure, system, paths: [summer], picked: summer.key, ...size });

  it("has its saturation curve where the air is saturated", () => {
    const points = pointsOf(list, "saturation", frame);
    expect(points.length).toBeGreaterThan(40);
    for (const { dryBulb, humidityRatio } of points.slice(0, -1)) {
      expect(humidityRatio).toBeCloseTo(saturationHumidityRatio(dryBulb, pressure), 9);
    }
    // Its last point is cut between two samples a third of a kelvin apart: the chord is off by parts in a hundred thousand.
    const end = points.at(-1)!;
    expect(end.humidityRatio).toBeCloseTo(saturationHumidityRatio(end.dryBulb, pressure), 4);
  });

  it("has its other families of lines where the fluid has them", () => {
    for (const percent of [20, 50, 80]) {
      for (const { dryBulb, humidityRatio } of pointsOf(list, `relative-humidity-${percent}`, frame).slice(0, -1)) {
        expect(relativeHumidityFromHumidityRatio(dryBulb, humidityRatio, pressure)).toBeCloseTo(percent / 100, 8);
      }
    }
    const wetBulb = system === "ip" ? 60 : 20;
    const bulb = fromDisplay(wetBulb, "temperature", system);
    for (const { dryBulb, humidityRatio } of pointsOf(list, `wet-bulb-${wetBulb}`, frame)) {
      expect(wetBulbFromHumidityRatio(dryBulb, humidityRatio, pressure)).toBeCloseTo(bulb, 2);
    }
    const volume = system === "ip" ? (altitude === 0 ? 13.5 : 17) : altitude === 0 ? 0.84 : 1.06;
    const target = fromDisplay(volume, "specificVolume", system);
    const along = pointsOf(list, `volume-${volume}`, frame);
    expect(along.length).toBeGreaterThan(2);
    for (const { dryBulb, humidityRatio } of along) {
      expect(specificVolume(dryBulb, humidityRatio, pressure)).toBeCloseTo(target, 5);
    }
  });

  it("has the ticks of its enthalpy scale on lines of constant enthalpy", () => {
    const reading = system === "ip" ? 20 : 40;
    const target = fromDisplay(reading, "enthalpy", system);
    for (const { dryBulb, humidityRatio } of pointsOf(list, `enthalpy-${reading}`, frame)) {
      // The tick lies beyond saturation on the straight continuation; lines of constant enthalpy are straight to 1 in 10³.
      expect(Math.abs(enthalpyFromHumidityRatio(dryBulb, humidityRatio) - target)).toBeLessThan(60);
    }
  });

  it("leads the path through its states and never through air that cannot be", () => {
    const points = pointsOf(list, "path-wet-bulb-day", frame);
    for (const state of summer.states) {
      const nearest = Math.min(
        ...points.map((point) =>
          Math.hypot(point.dryBulb - state.dryBulb, 1e3 * (point.humidityRatio - state.humidityRatio)),
        ),
      );
      expect(nearest, state.name).toBeLessThan(1e-9);
    }
    for (const { dryBulb, humidityRatio } of points) {
      expect(humidityRatio).toBeLessThanOrEqual(saturationHumidityRatio(dryBulb, pressure) * (1 + 1e-9));
    }
  });

  it("keeps everything inside its box and its keys apart", () => {
    const keys = list.items.map((item) => item.key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const item of list.items) {
      if (item.shape !== "line") continue;
      for (let index = 0; index < item.points.length; index += 2) {
        expect(item.points[index], item.key).toBeGreaterThanOrEqual(0);
        expect(item.points[index], item.key).toBeLessThanOrEqual(size.width);
        expect(item.points[index + 1], item.key).toBeGreaterThanOrEqual(0);
        expect(item.points[index + 1], item.key).toBeLessThanOrEqual(size.height);
      }
    }
  });
});

it("agrees with points read off a printed sea-level chart", () => {
  // ASHRAE Handbook: Fundamentals, chapter 1, table 2 (moist air at 101.325 kPa): saturated air at 20 °C holds 14.758 g/kg,
  // at 10 °C 7.661 g/kg. A chart is read to a third of a pencil line, about 0.05 g/kg.
  const frame = psychrometricFrame(101_325, "si", summer.states, size);
  const list = psychrometricChart({ pressure: 101_325, system: "si", paths: [summer], picked: undefined, ...size });
  const saturation = pointsOf(list, "saturation", frame);
  for (const [dryBulb, ratio] of [
    [20, 0.014758],
    [10, 0.007661],
  ] as const) {
    const after = saturation.findIndex((point) => point.dryBulb >= dryBulb);
    const [one, other] = [saturation[after - 1]!, saturation[after]!];
    const share = (dryBulb - one.dryBulb) / (other.dryBulb - one.dryBulb);
    const read = one.humidityRatio + share * (other.humidityRatio - one.humidityRatio);
    expect(Math.abs(read - ratio)).toBeLessThan(5e-5);
  }
});
