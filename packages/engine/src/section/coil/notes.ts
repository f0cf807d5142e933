import { solveCoil } from "#component/coil/march";
import { createCoilWork, createPerformance } from "#component/coil/performance";
import { airSideCorrelations } from "#component/finned-surface/correlation";
import type { LiquidSupply } from "#duty/condition";
import type { Air } from "../air.ts";
import type { Note } from "../contract.ts";
import type { CoilBlock } from "./block.ts";
import { freezeNotes } from "./freeze.ts";
import type { LiquidCoilFigures } from "./liquid.ts";
import { createCoilInlet, setInletAir } from "./state.ts";

/** Notes about method and tubes that all liquid coils share. */
export function liquidCoilNotes(block: CoilBlock, supply: LiquidSupply | undefined, rating: LiquidCoilFigures): Note[] {
  const notes: Note[] = [];
  const { coil } = block;
  const { surface } = coil;
  if (rating.rangeDistance > 0) {
    notes.push({
      what: `${surface.tested === undefined ? surface.correlation : "the tested curve"} is used ${percent(rating.rangeDistance)} outside its published range`,
      weight: "information",
    });
  }
  if (coil.passes % 2 === 1) {
    notes.push({ what: "an odd number of passes: supply and return are at opposite ends", weight: "information" });
  }
  if (rating.liquidMassFlow > 0) notes.push(...flowNotes(rating));
  if (supply !== undefined && supply.supplyTemperature < rating.freezePoint) {
    notes.push({ what: "the liquid is supplied below its freezing point", weight: "caution" });
  }
  notes.push(...freezeNotes("its liquid stops", rating));
  const band = rating.liquidMassFlow > 0 && supply !== undefined ? capacityBand(block, supply, rating) : undefined;
  if (band !== undefined) {
    notes.push({
      what: `other published correlations give ${percent(band.low)} to ${percent(band.high)} of this capacity at this flow`,
      weight: "information",
    });
  }
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

/** Capacity by the other correlations for the same fins, as shares of the rating's; undefined where there is none. */
export function capacityBand(
  block: CoilBlock,
  supply: LiquidSupply,
  rating: LiquidCoilFigures,
): { readonly low: number; readonly high: number } | undefined {
  const inlet = createCoilInlet();
  setInletAir(block, rating.entering as Air, inlet);
  inlet.liquid = supply.liquid;
  inlet.liquidFlow = rating.liquidMassFlow / block.stacked;
  inlet.liquidTemperature = rating.liquidEntering;
  const work = createCoilWork();
  const out = createPerformance();
  const { coil } = block;
  const heatWith = (correlation: string): number => {
    work.levels = 0;
    solveCoil({ ...coil, surface: { ...coil.surface, correlation, tested: undefined } }, inlet, work, out);
    return Math.abs(out.heat);
  };
  const others = airSideCorrelations.filter(
    ({ name, pattern }) =>
      pattern === coil.surface.pattern && name !== coil.surface.correlation && name !== "circular fins 1984",
  );
  if (others.length === 0 || !(rating.capacity > 0)) return undefined;
  const shares = others.map(({ name }) => (heatWith(name) * block.stacked) / rating.capacity);
  return { low: Math.min(...shares), high: Math.max(...shares) };
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
