import { carryOverVelocity } from "#component/coil/carry-over";
import type { Coil } from "#component/coil/coil";
import { connectionFor } from "#component/coil/liquid-pressure";
import { flag, quantity, type ValuesOf } from "#form/field";
import { type CoilBlock, prepareCoilBlock } from "../coil/block.ts";
import { type DeclaredLiquidCoil, declaredLiquidRating } from "../coil/declared-fields.ts";
import { coilCoreFields, liquidCoilFields, rowFields, surfaceField } from "../coil/fields.ts";
import { highestTubeVelocity } from "../coil/valve.ts";
import type { Frame } from "../contract.ts";

/** What a person writes about a chilled-water coil. */
export const chilledWaterCoilFields = {
  surface: surfaceField("typical plain 5/8 in"),
  ...rowFields(8, 12, "12 per in"),
  ...liquidCoilFields,
  ...coilCoreFields,
  fullFlow: quantity("liquidFlow", {
    meaning: "Water flow of all coils with the valve open; from the duty's flow or rise when left out",
    optional: true,
    minimum: "0.5 gpm",
    maximum: "5000 gpm",
  }),
  intermediatePans: flag({ meaning: "A pan below each upper coil, with a down-comer", default: true }),
  panReach: quantity("length", {
    meaning: "Reach of the main pan behind the leaving face of the fins",
    default: "30 in",
    minimum: "0 in",
    maximum: "8 ft",
  }),
  declaredRating: declaredLiquidRating("cooling"),
} as const;

/** A chilled-water coil, single or stacked, ready to be rated. */
export interface ChilledWaterCoilDesign {
  readonly block: CoilBlock;
  readonly fullFlow: number | undefined;
  readonly intermediatePans: boolean;
  /** m: reach of the main pan behind the fins; of an intermediate pan; depth of a pan. */
  readonly panReach: number;
  readonly intermediateReach: number;
  readonly panDepth: number;
  /** m/s of face velocity at which water is thrown. */
  readonly carryOverVelocity: number;
  /** m, inside diameter of the connections of one coil, and their nominal size. */
  readonly connection: number;
  readonly connectionName: string;
  readonly declaredRating: DeclaredLiquidCoil | undefined;
}

/** m: depth of pans, clear height between stacked casings with and without a pan, reach of an intermediate pan. */
const panDepth = 0.05;
const roomForPan = 0.09;
const roomWithoutPan = 0.005;
const intermediateReach = 0.076;

/** The connection of one coil: for its flow (m³/s) where given, else for a tube velocity in the middle of practice. */
export function chilledWaterConnection(coil: Coil, flow: number | undefined): ReturnType<typeof connectionFor> {
  return connectionFor(flow ?? 0.6 * highestTubeVelocity * coil.bore * coil.circuits);
}

/** Sizes the coils to the cabinet and their pans to the coils. */
export function prepareChilledWaterCoil(
  values: ValuesOf<typeof chilledWaterCoilFields>,
  frame: Frame,
): ChilledWaterCoilDesign {
  const withPans = values.intermediatePans && values.stacked > 1;
  const block = prepareCoilBlock(
    values,
    frame,
    {
      base: panDepth + 0.05,
      between: withPans ? roomForPan : roomWithoutPan,
      upstream: 0.05,
      downstream: 0.15,
      ends: 0.23,
    },
    {
      circuits: values.circuits,
      flow: values.flowPath,
      turbulators: values.turbulators === "wire",
      ends: values.connectionEnds,
    },
  );
  const { coil } = block;
  const connection = chilledWaterConnection(coil, values.fullFlow && values.fullFlow / block.stacked);
  return {
    block,
    fullFlow: values.fullFlow,
    intermediatePans: withPans,
    panReach: values.panReach,
    intermediateReach,
    panDepth,
    carryOverVelocity: carryOverVelocity(coil.finsPerLength, coil.finMaterial),
    connection: connection.diameter,
    connectionName: connection.nominal,
    declaredRating: values.declaredRating,
  };
}
