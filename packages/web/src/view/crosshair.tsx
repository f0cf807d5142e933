import { type AirwayAxis, axisPoint } from "@oncethrough/engine/chart/airway-axis";
import { type ProfilePanel, panelPoint } from "@oncethrough/engine/chart/profile-panel";
import type { ProfileList } from "@oncethrough/engine/chart/profiles";
import { textWidth } from "@oncethrough/engine/chart/text-size";
import { dewPointFromHumidityRatio } from "@oncethrough/engine/fluid/dew-point";
import { enthalpyFromHumidityRatio, relativeHumidityFromHumidityRatio } from "@oncethrough/engine/fluid/moist-air";
import { printNumber, printQuantity } from "@oncethrough/engine/quantity/print";
import { absolutePressure } from "@oncethrough/engine/section/station";
import type { Station } from "@oncethrough/engine/unit/rating";
import { printFigure } from "#state/figures";
import { useBench } from "./use-bench.ts";

interface CrosshairProps {
  readonly station: Station;
  readonly axis: AirwayAxis;
  readonly profiles: ProfileList;
  /** px, where the profiles begin. */
  readonly top: number;
  readonly width: number;
}

/** A line through drawing and profiles at one station, with the state of the air there. */
export function Crosshair({ station, axis, profiles, top, width }: CrosshairProps) {
  const x = axisPoint(axis, 1000 * station.position);
  const { temperature, moisture, pressure } = profiles.panels;
  const { air } = station;
  const dewPoint = dewPointFromHumidityRatio(air.humidityRatio, absolutePressure(air));
  const isSaturated = air.dryBulb - dewPoint < 2;
  return (
    <g className="crosshair">
      <line x1={x} x2={x} y1={0} y2={top + profiles.box.height} />
      <StationWords station={station} x={x} y={top - 10} width={width} />
      <Mark panel={temperature} x={x} top={top} value={air.dryBulb} ink="heat" dy={-6} />
      <Mark panel={temperature} x={x} top={top} value={dewPoint} ink="water" dy={isSaturated ? 15 : 14} />
      <Mark panel={moisture} x={x} top={top} value={air.humidityRatio} ink="moisture" dy={-6} />
      <Mark panel={pressure} x={x} top={top} value={air.staticPressure} ink="strong" dy={-6} />
    </g>
  );
}

interface MarkProps {
  readonly panel: ProfilePanel;
  readonly x: number;
  readonly top: number;
  readonly value: number;
  readonly ink: "heat" | "water" | "moisture" | "strong";
  readonly dy: number;
}

/** A point on a curve with its figure. */
function Mark({ panel, x, top, value, ink, dy }: MarkProps) {
  const system = useBench((bench) => bench.system);
  const y = top + panelPoint(panel, value);
  return (
    <g className={`mark mark-${ink}`}>
      <circle cx={x} cy={y} r={2.8} />
      <text x={x + 6} y={y + dy}>
        {printNumber(value, panel.kind, system).replace("-", "−")}
      </text>
    </g>
  );
}

/** What the station is, and what no curve shows. */
function StationWords({ station, x, y, width }: { station: Station; x: number; y: number; width: number }) {
  const system = useBench((bench) => bench.system);
  const { air } = station;
  const pressure = absolutePressure(air);
  const name = station.after === "outdoors" ? "outdoors" : `after ${station.after}`;
  const humidity = relativeHumidityFromHumidityRatio(air.dryBulb, air.humidityRatio, pressure);
  const figures = [
    `${printFigure(100 * humidity, "count", system)} % rh`,
    printQuantity(enthalpyFromHumidityRatio(air.dryBulb, air.humidityRatio), "enthalpy", system).replace("-", "−"),
    printQuantity(station.velocity, "velocity", system),
    `coldest ${printQuantity(air.coldestFilament, "temperature", system).replace("-", "−")}`,
  ];
  const words = figures.join("   ");
  const wide = textWidth(name, "normal") + textWidth(words, "small") + 14;
  const left = Math.max(4, Math.min(x - 6, width - wide - 4));
  return (
    <text className="station-words" x={left} y={y}>
      <tspan className="station-name">{name}</tspan>
      <tspan dx={10}>{words}</tspan>
    </text>
  );
}
