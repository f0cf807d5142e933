import { readdirSync, readFileSync } from "node:fs";
import type { Job } from "#job/job";
import { readJob } from "#job/read-job";
import { shippedCatalogue } from "#section/shipped.test-data";

const folder = new URL("../../../../examples/", import.meta.url);

/** Names of the shipped examples. */
export const exampleNames = readdirSync(folder)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => name.replace(".yaml", ""));

/** The job of a text; throws with every problem. */
export function jobOf(text: string): Job {
  const reading = readJob(text, shippedCatalogue);
  if (reading.job === undefined) throw new Error(JSON.stringify(reading.problems));
  return reading.job;
}

/** A shipped example. */
export function exampleJob(name: string): Job {
  return jobOf(readFileSync(new URL(`${name}.yaml`, folder), "utf8"));
}

/** A small indoor unit whose masses were worked by hand: filters, chilled-water coil, access, one plenum wheel. */
export const handWorkedText = `format: oncethrough job 1
duty:
  tag: HW-1
  site: { altitude: 0 ft, placement: indoor }
  supply airflow: { design: 8000 cfm }
  summer:
    dry bulb day: { dry bulb: 90 °F, wet bulb: 74 °F }
    wet bulb day: { dry bulb: 86 °F, wet bulb: 76 °F }
    dew point day: { dry bulb: 82 °F, dew point: 72 °F }
  winter: { dry bulb: 45 °F, relative humidity: 60 % }
  set points: { coil leaving: 56 °F, winter supply: 45 °F }
  external static: { pressure: 1 in.wg }
  utilities:
    chilled water: { supply: 44 °F, rise: 12 F° }
    electricity: { voltage: 460 V }
unit:
  casing: { width: 60 in, height: 60 in, rail height: 10 in, frame: steel tube }
  sections:
    - { kind: access, name: intake, length: 36 in, door height: 54 in }
    - { kind: filter bank, name: filters, medium: typical MERV 14 rigid 12 in, length: 36 in }
    - { kind: chilled-water coil, name: cooling coil, rows: 6, fins: 10 per in, length: 48 in }
    - { kind: fan, name: fan, wheel: typical airfoil plenum wheel, diameter: 24.5 in, motor power: 10 hp }
`;
