import { dryAirPressureDrop } from "#component/coil/air-pressure";
import type { Coil } from "#component/coil/coil";
import { solveCoil } from "#component/coil/march";
import { type CoilInlet, createCoilWork, createPerformance } from "#component/coil/performance";
import { createSteamPerformance, createSteamWork, solveSteamCoil } from "#component/coil/steam-coil";
import {
  type AirSideCorrelation,
  airSideCorrelations,
  correlationOfName,
  distanceFromRange,
  frictionCorrelation,
} from "#component/finned-surface/correlation";
import { surfaceDistance } from "#component/finned-surface/family";
import type { WorkingTable } from "../contract.ts";

/** What a published correlation makes of a coil at the flows of its rating, beside the one that it is rated by. */
export interface RivalCorrelation {
  readonly correlation: AirSideCorrelation;
  /** Outside its range by, a share; 0 inside. */
  readonly distance: number;
  /** Capacity and dry air pressure loss over those of the rating. */
  readonly capacity: number;
  readonly dryLoss: number;
}

/** Rating and rivals: the answers of the published correlations for one coil, and what the coil itself is rated by. */
export interface CorrelationBand {
  /** What heat and friction of the rating follow, and how far outside their ranges they are used. */
  readonly heat: string;
  readonly friction: string;
  readonly isChosen: boolean;
  readonly heatDistance: number;
  readonly frictionDistance: number;
  readonly rivals: readonly RivalCorrelation[];
}

/** The bare surface by another correlation: multipliers and curves belong to the one that they were found with. */
function byCorrelation(coil: Coil, correlation: string): Coil {
  const bare = { heatFactor: 1, frictionFactor: 1, wetHeat: undefined, wetHeatFactor: undefined, tested: undefined };
  return { ...coil, surface: { ...coil.surface, ...bare, correlation } };
}

interface Answer {
  readonly heat: number;
  readonly leaving: number;
  readonly reynolds: number;
}

function bandOf(coil: Coil, inlet: CoilInlet, withRivals: boolean, answer: (coil: Coil) => Answer): CorrelationBand {
  const { surface, bank } = coil;
  const own = answer(coil);
  const lossOf = (each: Coil, leaving: number) =>
    dryAirPressureDrop(each, inlet.dryAirFlow, inlet.humidityRatio, inlet.dryBulb, leaving, inlet.pressure);
  const ownLoss = lossOf(coil, own.leaving);
  const isBare = surface.tested === undefined && surface.heatFactor === 1 && surface.frictionFactor === 1;
  const others = airSideCorrelations.filter(
    ({ name, pattern, onlyRival }) =>
      pattern === surface.pattern && !(isBare && name === surface.correlation) && (withRivals || onlyRival !== true),
  );
  const rivals = others.map((correlation): RivalCorrelation => {
    const rival = byCorrelation(coil, correlation.name);
    const { heat, leaving } = answer(rival);
    return {
      correlation,
      distance: distanceFromRange(correlation, bank, own.reynolds),
      capacity: heat / own.heat,
      dryLoss: correlation.friction === undefined ? Number.NaN : lossOf(rival, leaving) / ownLoss,
    };
  });
  const named = correlationOfName(surface.correlation);
  const friction = frictionCorrelation(named);
  const isTested = surface.tested !== undefined;
  const distance = surfaceDistance(surface, bank, own.reynolds);
  return {
    heat: isTested ? "the record's tested curve" : named.name,
    friction: isTested ? "the record's tested curve" : friction.name,
    isChosen: surface.isChosen && !isTested,
    heatDistance: distance,
    frictionDistance: isTested ? distance : distanceFromRange(friction, bank, own.reynolds),
    rivals,
  };
}

/** The correlations for a coil with liquid in its tubes, at `inlet`; undefined where nothing flows or no heat passes. */
export function liquidCoilBand(coil: Coil, inlet: CoilInlet): CorrelationBand | undefined {
  if (!(inlet.dryAirFlow > 0 && inlet.liquidFlow > 0 && inlet.dryBulb !== inlet.liquidTemperature)) return undefined;
  const work = createCoilWork();
  const out = createPerformance();
  return bandOf(coil, inlet, false, (each) => {
    work.levels = 0;
    solveCoil(each, inlet, work, out);
    return { heat: out.heat, leaving: out.leavingDryBulb, reynolds: out.airReynolds };
  });
}

/** The correlations for a coil on steam of one temperature. The research routine for circular fins stands among them. */
export function steamCoilBand(coil: Coil, inlet: CoilInlet, steamTemperature: number): CorrelationBand | undefined {
  if (!(inlet.dryAirFlow > 0 && steamTemperature > inlet.dryBulb)) return undefined;
  const work = createSteamWork();
  const out = createSteamPerformance();
  const { dryAirFlow, dryBulb, humidityRatio, coldestFilament } = inlet;
  return bandOf(coil, inlet, true, (each) => {
    solveSteamCoil(each, dryAirFlow, dryBulb, humidityRatio, coldestFilament, steamTemperature, work, out);
    return { heat: out.heat, leaving: out.leavingDryBulb, reynolds: out.airReynolds };
  });
}

/** Least and most of what the rivals say; undefined where none says anything. */
export function spreadOf(
  band: CorrelationBand,
  of: "capacity" | "dryLoss",
): { readonly low: number; readonly high: number } | undefined {
  const shares = band.rivals.map((each) => each[of]).filter((share) => Number.isFinite(share));
  return shares.length === 0 ? undefined : { low: Math.min(...shares), high: Math.max(...shares) };
}

/** The choice in a sentence: by what, how far outside its range, what the others make of it. */
export function bandWords(band: CorrelationBand): string {
  const range = (distance: number) =>
    distance > 0 ? `${percent(distance)} outside its published range` : "within its published range";
  const how = band.isChosen ? "chosen by itself, " : "";
  const heat = `air side by ${band.heat}, ${how}${range(band.heatDistance)}`;
  const friction = band.friction === band.heat ? "" : `; friction by ${band.friction}, ${range(band.frictionDistance)}`;
  const capacity = spreadOf(band, "capacity");
  const loss = spreadOf(band, "dryLoss");
  const others =
    capacity === undefined ? "" : `; other published correlations give ${between(capacity)} of this capacity`;
  const resistance = loss === undefined ? "" : ` and ${between(loss)} of this air pressure loss`;
  return `${heat}${friction}${others}${resistance}`;
}

/** The choice as a table, own first. */
export function bandTable(band: CorrelationBand): WorkingTable {
  return {
    name: "published correlations for this surface at these flows",
    columns: [
      { name: "correlation", quantity: "words" },
      { name: "known", quantity: "words" },
      { name: "outside its range", quantity: "share" },
      { name: "capacity", quantity: "share" },
      { name: "air pressure loss, dry", quantity: "share" },
    ],
    lines: [
      [`${band.heat}${band.isChosen ? ", chosen" : ""}`, "rating", band.heatDistance, 1, 1],
      ...band.rivals.map(({ correlation, distance, capacity, dryLoss }) => [
        correlation.name,
        correlation.certainty,
        distance,
        capacity,
        dryLoss,
      ]),
    ],
    equations: [
      "shares of the rating's own capacity and loss; others bare, without the record's multipliers",
      `friction of the rating by ${band.friction}; a dash where a publication gives none`,
    ],
    source: "definition",
  };
}

function between({ low, high }: { readonly low: number; readonly high: number }): string {
  const [from, to] = [percent(low), percent(high)];
  return from === to ? from : `${from} to ${to}`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
