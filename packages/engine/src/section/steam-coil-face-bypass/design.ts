import { factor, integer, quantity, type ValuesOf } from "#form/field";
import { prepareCoilBlock } from "../coil/block.ts";
import { type DeclaredSteamCoil, declaredSteamRating } from "../coil/declared-fields.ts";
import { prepareInnerTubes } from "../coil/distributor.ts";
import { coilCoreFields, rowFields, surfaceField } from "../coil/fields.ts";
import { type SteamPiping, steamCoilFields } from "../coil/steam.ts";
import type { Frame } from "../contract.ts";

const { stacked: _, ...coreFields } = coilCoreFields;

/** What a person writes about a steam coil with integral face and bypass. */
export const faceBypassFields = {
  surface: surfaceField("typical steam-distributing 1 in"),
  ...rowFields(2, 4, "8 per in"),
  ...coreFields,
  ...steamCoilFields,
  lanes: integer({
    meaning: "Coil lanes one above the other, each with a bypass channel beside it",
    default: 3,
    minimum: 1,
    maximum: 8,
  }),
  bypassOpening: quantity("length", {
    meaning: "Height of each bypass channel; two fifths of a lane when left out",
    optional: true,
    minimum: "2 in",
    maximum: "3 ft",
  }),
  damperLeakage: quantity("share", {
    meaning: "Air that slips through the closed side, face or bypass",
    default: "3 %",
    minimum: "0 %",
    maximum: "20 %",
  }),
  mixingEffectiveness: quantity("share", {
    meaning: "How well lanes and channels have mixed at the end of the section, 1 minus leaving over made spread",
    default: "75 %",
    minimum: "0 %",
    maximum: "100 %",
  }),
  bypassLoss: factor({
    meaning: "Velocity heads that an open bypass channel with its dampers costs",
    default: 2.5,
    minimum: 0.5,
    maximum: 20,
  }),
  declaredRating: declaredSteamRating,
} as const;

/** A face-and-bypass coil ready to be rated; the block's stacked coils are its lanes. */
export interface FaceBypassDesign extends SteamPiping {
  readonly bypassOpening: number;
  /** m², of all bypass channels. */
  readonly bypassArea: number;
  readonly damperLeakage: number;
  readonly mixingEffectiveness: number;
  readonly bypassLoss: number;
  readonly declaredRating: DeclaredSteamCoil | undefined;
}

/** Sizes lanes and channels to the cabinet. */
export function prepareFaceBypass(values: ValuesOf<typeof faceBypassFields>, frame: Frame): FaceBypassDesign {
  const opening = values.bypassOpening ?? (0.4 / 1.4) * (frame.height / values.lanes);
  const block = prepareCoilBlock(
    { ...values, stacked: values.lanes },
    frame,
    { base: 0.02 + opening, between: opening, upstream: 0.25, downstream: 0.3, ends: 0.25 },
    "steam",
  );
  return {
    block,
    inner: prepareInnerTubes(values, block),
    bypassOpening: opening,
    bypassArea: opening * values.lanes * block.coil.bank.finnedLength,
    damperLeakage: values.damperLeakage,
    mixingEffectiveness: values.mixingEffectiveness,
    bypassLoss: values.bypassLoss,
    dropLeg: values.dropLeg,
    vacuumBreaker: values.vacuumBreaker,
    trap: values.trap,
    declaredRating: values.declaredRating,
    freezestat: values.freezestat,
  };
}
