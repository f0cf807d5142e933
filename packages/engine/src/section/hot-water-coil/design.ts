import type { Coil } from "#component/coil/coil";
import { connectionFor } from "#component/coil/liquid-pressure";
import { choice, quantity, type ValuesOf } from "#form/field";
import { type CoilBlock, prepareCoilBlock } from "../coil/block.ts";
import { type DeclaredLiquidCoil, declaredLiquidRating } from "../coil/declared-fields.ts";
import { coilCoreFields, liquidCoilFields, rowFields, surfaceField } from "../coil/fields.ts";
import { freezestatFields } from "../coil/freezestat.ts";
import { highestTubeVelocity } from "../coil/valve.ts";
import type { Frame } from "../contract.ts";

/** What a person writes about a hot-water or glycol coil. */
export const hotWaterCoilFields = {
  surface: surfaceField("typical plain 5/8 in"),
  ...rowFields(2, 8, "8 per in"),
  ...liquidCoilFields,
  ...coilCoreFields,
  control: choice(["throttling valve", "pumped loop"], {
    meaning: "The valve throttles the flow, or a pump of the coil keeps the flow and the valve blends supply into it",
    default: "throttling valve",
  }),
  fullFlow: quantity("liquidFlow", {
    meaning: "Flow of all coils with the valve open, and of the pumped loop; from the duty when left out",
    optional: true,
    minimum: "0.5 gpm",
    maximum: "5000 gpm",
  }),
  declaredRating: declaredLiquidRating("heating"),
  ...freezestatFields,
} as const;

/** A hot-water coil ready to be rated. */
export interface HotWaterCoilDesign {
  readonly block: CoilBlock;
  readonly control: "throttling valve" | "pumped loop";
  readonly fullFlow: number | undefined;
  readonly freezestat: number;
  readonly connection: number;
  readonly connectionName: string;
  readonly declaredRating: DeclaredLiquidCoil | undefined;
}

/** The connection of one coil: for its flow (m³/s) where given, else for a tube velocity in the middle of practice. */
export function hotWaterConnection(coil: Coil, flow: number | undefined): ReturnType<typeof connectionFor> {
  return connectionFor(flow ?? 0.5 * highestTubeVelocity * coil.bore * coil.circuits);
}

/** Sizes the coil to the cabinet. */
export function prepareHotWaterCoil(values: ValuesOf<typeof hotWaterCoilFields>, frame: Frame): HotWaterCoilDesign {
  const block = prepareCoilBlock(
    values,
    frame,
    { base: 0.06, between: 0.005, upstream: 0.05, downstream: 0.15, ends: 0.23 },
    {
      circuits: values.circuits,
      flow: values.flowPath,
      turbulators: values.turbulators === "wire",
      ends: values.connectionEnds,
    },
  );
  const connection = hotWaterConnection(block.coil, values.fullFlow && values.fullFlow / block.stacked);
  return {
    block,
    control: values.control,
    fullFlow: values.fullFlow,
    freezestat: values.freezestat,
    connection: connection.diameter,
    connectionName: connection.nominal,
    declaredRating: values.declaredRating,
  };
}
