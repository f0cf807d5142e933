import { choice, quantity, type ValuesOf } from "#form/field";
import { prepareCoilBlock } from "../coil/block.ts";
import { type DeclaredSteamCoil, declaredSteamRating } from "../coil/declared-fields.ts";
import { prepareInnerTubes } from "../coil/distributor.ts";
import { coilCoreFields, rowFields, surfaceField } from "../coil/fields.ts";
import { type SteamPiping, steamCoilFields } from "../coil/steam.ts";
import type { Frame } from "../contract.ts";

/** What a person writes about a steam coil. */
export const steamCoilSectionFields = {
  surface: surfaceField("typical steam-distributing 1 in"),
  ...rowFields(1, 4, "8 per in"),
  ...coilCoreFields,
  ...steamCoilFields,
  control: choice(["modulating valve", "two-position valve"], {
    meaning: "How the steam is controlled",
    default: "modulating valve",
  }),
  opensBelow: quantity("temperature", {
    meaning: "Entering air below which a two-position valve opens",
    default: "40 °F",
    minimum: "-40 °F",
    maximum: "80 °F",
  }),
  declaredRating: declaredSteamRating,
} as const;

/** A steam coil ready to be rated. */
export interface SteamCoilDesign extends SteamPiping {
  readonly control: "modulating valve" | "two-position valve";
  readonly opensBelow: number;
  readonly declaredRating: DeclaredSteamCoil | undefined;
}

/** Sizes the coil to the cabinet; its outlet is high enough for part of the drop leg to stand inside. */
export function prepareSteamCoil(values: ValuesOf<typeof steamCoilSectionFields>, frame: Frame): SteamCoilDesign {
  const block = prepareCoilBlock(
    values,
    frame,
    { base: 0.06, between: 0.01, upstream: 0.05, downstream: 0.15, ends: 0.25 },
    "steam",
  );
  const { control, opensBelow, dropLeg, vacuumBreaker, trap, declaredRating, freezestat } = values;
  const inner = prepareInnerTubes(values, block);
  return { block, inner, control, opensBelow, dropLeg, vacuumBreaker, trap, declaredRating, freezestat };
}
