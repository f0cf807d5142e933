import { scaleOf } from "@oncethrough/engine/chart/fan-test-chart";
import type { FanWheel } from "@oncethrough/engine/component/fan-wheel";
import type { FanTest } from "@oncethrough/engine/design/fan-test";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { printInUnit } from "@oncethrough/engine/quantity/print";
import type { FanTable } from "./fan-table.ts";

/** What a record is made of. */
export interface RecordParts {
  readonly test: FanTest;
  readonly units: Extract<FanTable, { ok: true }>["units"];
  readonly name: string;
  /** The file of the test, as it is cited. */
  readonly source: string;
  /** Year-month-day. */
  readonly date: string;
  /** The line of wheels whose sizes and masses are taken over. */
  readonly like: FanWheel;
}

/** The text of a catalogue file with the tested wheel as its one record. */
export function fanRecord({ test, units, name, source, date, like }: RecordParts): string {
  const scale = scaleOf(test);
  const quantity = (value: number, kind: QuantityKind, unit: string) => quoted(printInUnit(value, kind, unit));
  const length = (value: number) => quantity(value, "length", "in");
  const points = test.points.map(
    (point) => `        - flow: ${quantity(point.flow * scale.flow, "actualAirflow", units.flow)}
          static pressure: ${quantity(point.pressure * scale.pressure, "pressureDifference", units.pressure)}
          shaft power: ${quantity(point.power * scale.power, "shaftPower", units.power)}`,
  );
  const classes = like.classes.map(
    (each) => `      - name: ${quoted(each.name)}
        tip speed: ${quantity(each.tipSpeed, "velocity", "fpm")}`,
  );
  return `family: fan wheel
records:
  - name: ${quoted(name)}
    basis: tested
    source: ${quoted(`test report ${source}`)}
    date: ${date}
    note: ${quoted(noteOf(test, like))}
    arrangement: ${like.arrangement}
    performance:
      kind: tested points
      test diameter: ${length(test.diameter)}
      test speed: ${quantity(test.speed, "rotationalSpeed", units.speed)}
      test density: ${quantity(test.density, "density", units.density)}
      stable share: ${share(test.stableShare)}
      points:
${points.join("\n")}
    smallest diameter: ${length(test.diameter)}
    largest diameter: ${length(Math.max(test.diameter, like.largestDiameter))}
    inlet diameter: ${share(like.inletDiameter)}
    outlet width: ${share(like.outletWidth)}
    outlet height: ${share(like.outletHeight)}
    blast area: ${share(like.blastArea)}
    housing width: ${share(like.housingWidth)}
    wheel width: ${share(like.wheelWidth)}
    blades: ${like.blades}
    stopped loss: ${share(like.stoppedLoss)}
    classes:
${classes.join("\n")}
    reference diameter: ${length(like.referenceDiameter)}
    wheel mass: ${quantity(like.wheelMass, "mass", "kg")}
    fan mass: ${quantity(like.fanMass, "mass", "kg")}
    gyration radius: ${share(like.gyrationRadius)}
`;
}

function noteOf({ stableFrom, tested }: FanTest, like: FanWheel): string {
  const steady =
    stableFrom === "peak pressure"
      ? "steady down to the flow at peak pressure, as tested"
      : "steady down to the least flow tested; less was not looked at";
  return `Curve from ${tested.length} tested points; ${steady}. Everything but the curve is taken over from "${like.head.name}": put in the wheel's own proportions, classes, masses. Larger wheels by similarity.`;
}

function share(value: number): string {
  return String(Number(value.toPrecision(5)));
}

/** A text as YAML takes it, whatever is in it. */
function quoted(text: string): string {
  return JSON.stringify(text);
}
