import type { FanTest } from "@oncethrough/engine/design/fan-test";
import type { FanTestPoint, FanTestProblem } from "@oncethrough/engine/design/fan-test-row";
import type { FanTestScatter } from "@oncethrough/engine/design/fan-test-scatter";

/** What `oncethrough import-fan --json` prints. All in SI; coefficients by the laws of fans. */
export interface ImportFanOutput {
  readonly format: "oncethrough import-fan 1";
  /** Why no record was made; empty where one was. */
  readonly problems: readonly FanTestProblem[];
  readonly name?: string;
  /** The record as a catalogue file holds it. */
  readonly record?: string;
  readonly test?: ImportedTest;
}

/** The test as it was brought to one curve. */
export interface ImportedTest {
  readonly diameter: number;
  readonly speed: number;
  readonly density: number;
  readonly bestEfficiency: number;
  readonly stableShare: number;
  readonly stableFrom: FanTest["stableFrom"];
  readonly tested: readonly FanTestPoint[];
  readonly points: FanTest["points"];
  readonly scatter: readonly FanTestScatter[];
}

/** A table from which no record can be made. */
export function refusedImport(problems: readonly FanTestProblem[]): ImportFanOutput {
  return { format: "oncethrough import-fan 1", problems };
}

/** A record and the test behind it. */
export function importedFan(name: string, record: string, test: FanTest): ImportFanOutput {
  const { curve, ...kept } = test;
  const { bestEfficiency } = curve;
  return { format: "oncethrough import-fan 1", problems: [], name, record, test: { ...kept, bestEfficiency } };
}
