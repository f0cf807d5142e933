import { europeanClass, leakageFluxFromClass } from "#component/casing-leakage";
import type { Unit } from "#unit/unit";
import type { Running } from "./running.ts";

/** Leakage of the casing in the forms that owners use. */
export interface CasingLeakage {
  /** m² of casing, ends included. */
  readonly area: number;
  readonly leakageClass: number;
  readonly europeanClass: string;
  /** m³/s with every section at its worst pressure; its share of the largest airflow. */
  readonly flow: number;
  readonly share: number;
  /** Share of the airflow at the whole casing under one and a half times the largest pressure, at most 10 in. of water. */
  readonly testPressure: number;
  readonly testShare: number;
  /** m²: area of a sharp opening that leaks as much at the test pressure. */
  readonly openArea: number;
}

/** Pa: highest pressure of a leakage test, 10 in. of water. */
const highestTest = 2490.9;

/** The casing's leakage by its class, at the pressures of the conditions and at a test's. */
export function casingLeakage(unit: Unit, running: Running): CasingLeakage {
  const { width, height } = unit.frame;
  const around = 2 * (width + height);
  const { leakageClass } = unit.casing;
  let [flow, largest] = [0, 0];
  unit.sections.forEach((section, index) => {
    const { least, most } = running.sections[index]!.wallPressure;
    const pressure = Math.max(-least, most, 0);
    largest = Math.max(largest, pressure);
    flow += leakageFluxFromClass(leakageClass, pressure) * around * section.layout.length;
  });
  const area = around * unit.length + 2 * width * height;
  const testPressure = Math.min(highestTest, 1.5 * largest);
  const testFlow = leakageFluxFromClass(leakageClass, testPressure) * area;
  const airflow = running.airflow.most;
  return {
    area,
    leakageClass,
    europeanClass: europeanClass(leakageClass),
    flow,
    share: airflow > 0 ? flow / airflow : 0,
    testPressure,
    testShare: airflow > 0 ? testFlow / airflow : 0,
    openArea: testPressure > 0 ? testFlow / (0.61 * Math.sqrt((2 * testPressure) / 1.2)) : 0,
  };
}
