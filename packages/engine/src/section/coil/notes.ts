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

/** What entered one coil of a block at its rating. */
export function ratedInlet(block: CoilBlock, liquid: Liquid, rating: LiquidCoilFigures): CoilInlet {
  const inlet = createCoilInlet();
  setInletAir(block, rating.entering as Air, inlet);
  inlet.liquid = liquid;
  inlet.liquidFlow = rating.liquidMassFlow / block.stacked;
  inlet.liquidTemperature = rating.liquidEntering;
  return inlet;
}
