import type { Coil } from "#component/coil/coil";

/** What is told of every way to build a coil, whatever runs in its tubes. */
export interface BuiltCoil {
  readonly surface: string;
  readonly rows: number;
  /** 1/m. */
  readonly fins: number;
  /** Of one coil or lane. */
  readonly tubesPerRow: number;
  /** The coil as it is. */
  readonly present: boolean;
  /** The present coil, with its remote twin where it has one, 100, by invented rates. */
  readonly priceIndex: number;
  /** W of all coils together. */
  readonly capacity: number;
  readonly leavingDryBulb: number;
  readonly faceVelocity: number;
  /** Pa of the section's air, as wet as the coil is. */
  readonly airPressureDrop: number;
  readonly rangeDistance: number;
  /** m along the flow, casing and all. */
  readonly depth: number;
}

/** What besides is told of a coil with liquid in its tubes. */
export interface CircuitedCoil extends BuiltCoil {
  /** Of one coil. */
  readonly circuits: number;
  readonly turbulators: boolean;
  readonly passes: number;
  /** kg/s of all coils, m/s in the tubes. */
  readonly liquidMassFlow: number;
  readonly tubeVelocity: number;
}

/** How a coil is built. */
export function buildOf({ surface, rows, finsPerLength, tubesPerRow }: Coil) {
  return { surface: surface.head.name, rows, fins: finsPerLength, tubesPerRow };
}

/** How its liquid is led. */
export function circuitsOf({ circuits, turbulators, passes }: Coil) {
  return { circuits, turbulators, passes };
}
