import type { CoilInlet } from "#component/coil/performance";
import type { LiquidSupply } from "#duty/condition";
import type { Liquid } from "#fluid/liquid";
import type { Air } from "../air.ts";
import type { Note } from "../contract.ts";
import type { CoilBlock } from "./block.ts";
import { freezeNotes } from "./freeze.ts";
import type { LiquidCoilFigures } from "./liquid.ts";
import { bandWords, liquidCoilBand } from "./rivals.ts";
import { createCoilInlet, setInletAir } from "./state.ts";

/** Notes about method and tubes that all liquid coils share. */
export function liquidCoilNotes(
  block: CoilBlock,
  liquid: Liquid,
  supply: LiquidSupply | undefined,
  rating: LiquidCoilFigures,
): Note[] {
  const notes: Note[] = [];
  const { coil } = block;
  const band = liquidCoilBand(coil, ratedInlet(block, liquid, rating));
  if (band !== undefined) notes.push({ what: bandWords(band), weight: "information" });
  if (rating.unsettled === 1) {
    notes.push({
      what: "the solution along the rows did not settle at this extreme state: its figures are in balance, and no better than some per cent",
      weight: "caution",
    });
  }
  if (coil.passes % 2 === 1) {
    notes.push({
      what: "an odd number of passes: the return with its vent leaves across from the supply, through the far side, which needs access too",
      weight: "information",
    });
  }
  if (rating.liquidMassFlow > 0) notes.push(...flowNotes(rating));
  if (supply !== undefined && supply.supplyTemperature < rating.freezePoint) {
    notes.push({ what: "the liquid is supplied below its freezing point", weight: "caution" });
  }
  notes.push(...freezeNotes("its liquid stops", rating));
  return notes;
}

function flowNotes(rating: LiquidCoilFigures): Note[] {
  const notes: Note[] = [];
  if (rating.tubeReynolds < 4000) {
    const kind = rating.tubeReynolds < 2300 ? "laminar" : "between laminar and turbulent";
    notes.push({ what: `flow in the tubes is ${kind}: capacity falls quickly with flow`, weight: "information" });
  }
  if (rating.tubeVelocity > 2.0) {
    notes.push({ what: "tubes of copper wear above about 2 m/s", weight: "caution", source: "common-practice" });
  }
  return notes;
}

/** Customary ranges in which heating coils on water are certified, SI: air, face, water, tubes. */
const heatingRanges = { air: [-17.8, 37.8], face: [1.016, 7.62], water: [48.9, 121.1], tubes: [0.15, 2.44] } as const;

/** A note where a heating coil on liquid is rated outside the ranges in which such coils are customarily certified. */
export function heatingRangeNotes(rating: LiquidCoilFigures): Note[] {
  const within = (value: number, [low, high]: readonly [number, number]) => value >= low - 0.06 && value <= high + 0.06;
  const { air, face, water, tubes } = heatingRanges;
  const isInside =
    rating.liquidMassFlow === 0 ||
    (within(rating.entering.dryBulb, air) &&
      within(rating.faceVelocity, face) &&
      within(rating.liquidEntering, water) &&
      within(rating.tubeVelocity, tubes));
  if (isInside) return [];
  return [
    {
      what: "outside the ranges in which hot-water coils are customarily certified (air 0–100 °F, 200–1500 fpm; water 120–250 °F, 0.5–8 ft/s)",
      weight: "information",
      source: "from-memory",
    },
  ];
}

/** What entered one coil of a block at its rating. */
export function ratedInlet(block: CoilBlock, liquid: Liquid, rating: LiquidCoilFigures): CoilInlet {
  const inlet = createCoilInlet();
  setInletAir(block, rating.entering as Air, inlet);
  inlet.liquid = liquid;
  inlet.liquidFlow = rating.liquidMassFlow / block.stacked;
  inlet.liquidTemperature = rating.liquidEntering;
  return inlet;
}
