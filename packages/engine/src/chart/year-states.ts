import { displayUnit, groupedNumber, printQuantity } from "#quantity/print";
import type { DisplayItem, DisplayList } from "#section/display";
import { rectangle, words } from "./items.ts";
import { type PsychrometricFrame, psychrometricFrame } from "./psychrometric-frame.ts";
import {
  enthalpyScale,
  relativeHumidityCurves,
  saturationCurve,
  squareGrid,
  wetBulbLines,
} from "./psychrometric-grid.ts";
import { densityCells } from "./weather-chart.ts";
import type { YearPictureOptions } from "./year-carpets.ts";
import { yearTitle } from "./year-title.ts";

/** Where the hours' outdoor air lies on the psychrometric chart, and where the air lies that the unit makes of it. */
export function yearStates({ year, system, width }: YearPictureOptions, height = 440): DisplayList {
  const { plan, lists } = year;
  const running = Array.from({ length: plan.hours }, (_, hour) => hour).filter((hour) => lists.running[hour] === 1);
  const pick = (list: Float64Array) => Float64Array.from(running, (hour) => list[hour]!);
  const outdoor = { dryBulb: pick(plan.weather.dryBulb), humidityRatio: pick(plan.humidityRatio) };
  const leaving = { dryBulb: pick(lists.supplyDryBulb), humidityRatio: pick(lists.supplyHumidityRatio) };
  const pressure = plan.pressure.reduce((sum, value) => sum + value, 0) / plan.hours;
  const states = [outdoor, leaving].flatMap(({ dryBulb, humidityRatio }) =>
    Array.from(dryBulb, (air, place) => ({ dryBulb: air, humidityRatio: humidityRatio[place]! })),
  );
  const frame = psychrometricFrame(pressure, system, states, { width, height });
  return {
    title: `Outdoor and leaving air of ${running.length} hours at ${printQuantity(pressure, "absolutePressure", system)}`,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height },
    items: [
      ...densityCells(frame, outdoor.dryBulb, outdoor.humidityRatio),
      ...densityCells(frame, leaving.dryBulb, leaving.humidityRatio, "heat"),
      ...squareGrid(frame),
      ...wetBulbLines(frame),
      ...relativeHumidityCurves(frame),
      ...enthalpyScale(frame),
      saturationCurve(frame),
      ...keyItems(
        frame,
        yearTitle(`States of ${groupedNumber(running.length, 0)} hours`, plan.weather.origin === "synthetic"),
      ),
    ],
  };
}

function keyItems(frame: PsychrometricFrame, title: string): readonly DisplayItem[] {
  const left = frame.left + 10;
  const top = frame.top + 20;
  const temperature = displayUnit("temperature", frame.system);
  const moisture = displayUnit("humidityRatio", frame.system);
  return [
    words("states-title", "strong", [left, top], title),
    ...(["moisture", "heat"] as const).flatMap((ink, index) => {
      const y = top + 12 + index * 15;
      return [
        rectangle(`states-key-${ink}`, ink, [left, y, left + 11, y + 11], { fill: ink, tone: 0.6 }),
        words(`states-key-${ink}-words`, "quiet", [left + 17, y + 9], ink === "heat" ? "leaving air" : "outdoor air", {
          size: "small",
        }),
      ];
    }),
    words("states-remark", "quiet", [left, top + 56], "darker: more hours", { size: "small" }),
    words("states-dry-bulb", "quiet", [(frame.left + frame.right) / 2, frame.bottom + 32], `dry bulb, ${temperature}`, {
      size: "small",
      anchor: "middle",
    }),
    words("states-moisture", "quiet", [frame.right + 46, frame.top - 8], moisture, { size: "small", anchor: "end" }),
  ];
}
