import type { FanCurvePoint } from "#component/fan-curve";

/** A row of a shop's fan test, in SI; `line` is where it stands in the file. */
export interface FanTestRow {
  readonly line: number;
  /** m³/s of the whole fan, Pa, W, rev/s, kg/m³ at the inlet. */
  readonly flow: number;
  readonly pressure: number;
  readonly shaftPower: number;
  readonly speed: number;
  readonly density: number;
}

/** What forbids making a record of a test: where, what, and what is needed. */
export interface FanTestProblem {
  readonly line: number;
  readonly problem: string;
  readonly needed: string;
}

/** A tested point without dimension. */
export interface FanTestPoint extends FanCurvePoint {
  readonly line: number;
  /** rev/s of the speed that it was tested at, as grouped. */
  readonly speed: number;
  /** Why it stands out from its neighbours; empty where it does not. */
  readonly outlier: string;
}
