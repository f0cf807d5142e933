import type { Running } from "@oncethrough/engine/arrangement/running";
import type { AirPath } from "@oncethrough/engine/chart/air-path";
import type { FanChartPoint } from "@oncethrough/engine/chart/fan-system";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";

/** Something wanted and not held: where, by how much, and at which condition it is worst. */
export interface Unmet {
  readonly section: string;
  readonly what: string;
  readonly quantity: QuantityKind;
  readonly wanted: number;
  readonly got: number;
  readonly condition: { readonly key: string; readonly name: string };
  /** How many of the solved conditions miss it. */
  readonly conditions: number;
}

/** A condition at which the unit could not be solved, and why. */
export interface Unsolved {
  readonly key: string;
  readonly name: string;
  readonly reason: string;
}

/** What the page shows of all conditions of a job at once; plain data that a worker can send. */
export interface ToldConditions {
  readonly running: Running;
  readonly paths: readonly AirPath[];
  readonly fanPoints: readonly FanChartPoint[];
  readonly unmet: readonly Unmet[];
  readonly unsolved: readonly Unsolved[];
  /** rev/s of the fastest that the fan turns; 0 where it never does. */
  readonly fastest: number;
}
