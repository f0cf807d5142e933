import { connectionFor } from "#component/coil/liquid-pressure";
import type { Liquid } from "#fluid/liquid";
import { liquidDensity } from "#fluid/liquid";
import { choice, group, integer, quantity, type ValuesOf } from "#form/field";
import { type CoilBlock, prepareCoilBlock } from "../coil/block.ts";
import { type DeclaredLiquidCoil, declaredLiquidRating } from "../coil/declared-fields.ts";
import { coilCoreFields, liquidCoilFields, rowFields, surfaceField } from "../coil/fields.ts";
import { type Frame, SectionProblem } from "../contract.ts";

/** What a person writes about a run-around recovery coil. */
export const recoveryCoilFields = {
  surface: surfaceField("typical plain 5/8 in"),
  ...rowFields(6, 12, "10 per in"),
  ...liquidCoilFields,
  ...coilCoreFields,
  exhaust: group(
    {
      rows: integer({
        meaning: "Rows of the exhaust coil; as the supply coil when left out",
        optional: true,
        minimum: 1,
        maximum: 12,
      }),
      fins: quantity("pitch", {
        meaning: "Fins of the exhaust coil; as the supply coil when left out",
        optional: true,
        minimum: "3 per in",
        maximum: "18 per in",
      }),
      finnedHeight: quantity("length", {
        meaning: "Height of its fins; as the supply coil's when left out",
        optional: true,
        minimum: "3 in",
        maximum: "12 ft",
      }),
      finnedLength: quantity("length", {
        meaning: "Length of its tubes; as the supply coil's when left out",
        optional: true,
        minimum: "6 in",
        maximum: "28 ft",
      }),
      stacked: integer({
        meaning: "Coils one above the other; as the supply coil when left out",
        optional: true,
        minimum: 1,
        maximum: 6,
      }),
    },
    { meaning: "The remote coil in the exhaust" },
  ),
  glycol: choice(["none", "ethylene glycol", "propylene glycol"], {
    meaning: "Antifreeze in the loop",
    default: "propylene glycol",
  }),
  concentration: quantity("share", {
    meaning: "Glycol by mass of the mixture",
    default: "30 %",
    minimum: "0 %",
    maximum: "60 %",
  }),
  loopFlow: quantity("liquidFlow", {
    meaning: "Flow of the loop; the one of 1.2 m/s in the supply coil's tubes when left out",
    optional: true,
    minimum: "0.5 gpm",
    maximum: "5000 gpm",
  }),
  frostLimit: quantity("temperature", {
    meaning: "Coldest liquid let into the exhaust coil; a valve leads warm liquid round the supply coil to keep it",
    default: "30 °F",
    minimum: "0 °F",
    maximum: "50 °F",
  }),
  declaredRating: declaredLiquidRating("either"),
} as const;

/** A run-around loop ready to be rated: the section's coil, its remote twin, and the liquid between. */
export interface RecoveryCoilDesign {
  readonly block: CoilBlock;
  readonly exhaust: CoilBlock;
  readonly liquid: Liquid;
  /** kg/s and m³/s of the whole loop. */
  readonly loopFlow: number;
  readonly loopVolumeFlow: number;
  readonly frostLimit: number;
  readonly connection: number;
  readonly exhaustConnection: number;
  readonly declaredRating: DeclaredLiquidCoil | undefined;
}

/** Sizes the section's coil to the cabinet and builds the exhaust coil beside it. */
export function prepareRecoveryCoil(values: ValuesOf<typeof recoveryCoilFields>, frame: Frame): RecoveryCoilDesign {
  const placing = { base: 0.1, between: 0.005, upstream: 0.05, downstream: 0.15, ends: 0.23 };
  const water = {
    circuits: values.circuits,
    flow: values.flowPath,
    turbulators: values.turbulators === "wire",
    ends: values.connectionEnds,
  };
  const block = prepareCoilBlock(values, frame, placing, water);
  const own = block.coil;
  const remote = values.exhaust;
  const finnedHeight = remote.finnedHeight ?? own.bank.finnedHeight;
  const finnedLength = remote.finnedLength ?? own.finnedLength;
  const stacked = remote.stacked ?? block.stacked;
  // The remote coil stands in a cabinet of its own, as large as it needs.
  const room: Frame = { ...frame, width: finnedLength + placing.ends, height: (finnedHeight + 0.2) * stacked + 0.2 };
  const exhaust = prepareCoilBlock(
    {
      ...values,
      rows: remote.rows ?? values.rows,
      fins: remote.fins ?? values.fins,
      finnedHeight,
      finnedLength,
      stacked,
      length: undefined,
    },
    room,
    placing,
    { ...water, ends: "as the circuits give", circuits: remoteCircuits(values.circuits, remote, own) },
  );
  const liquid: Liquid =
    values.glycol === "none"
      ? { substance: "water", massFraction: 0 }
      : { substance: values.glycol, massFraction: values.concentration };
  if (values.glycol === "none" && values.frostLimit < 0.5) {
    throw new SectionProblem(
      "glycol",
      "plain water would freeze at the frost limit",
      "a glycol, or a frost limit above 33 °F",
    );
  }
  const density = liquidDensity(liquid, 10);
  const usual = 1.2 * own.bore * own.circuits * block.stacked;
  const volume = values.loopFlow ?? usual;
  return {
    block,
    exhaust,
    liquid,
    loopFlow: volume * density,
    loopVolumeFlow: volume,
    frostLimit: values.frostLimit,
    connection: connectionFor(volume / block.stacked).diameter,
    exhaustConnection: connectionFor(volume / exhaust.stacked).diameter,
    declaredRating: values.declaredRating,
  };
}

/** The supply coil's circuits where the exhaust coil has the same tubes; one for each tube of a row where it differs. */
function remoteCircuits(
  circuits: number | undefined,
  remote: { readonly rows: number | undefined; readonly finnedHeight: number | undefined },
  own: { readonly rows: number },
): number | undefined {
  const same = (remote.rows === undefined || remote.rows === own.rows) && remote.finnedHeight === undefined;
  return same ? circuits : undefined;
}
