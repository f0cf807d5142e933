import { dryAirPressureDrop, wetToDry } from "#component/coil/air-pressure";
import { carryOverVelocity } from "#component/coil/carry-over";
import { buildCoil, type Coil, circuitChoices } from "#component/coil/coil";
import { liquidPressureDrop } from "#component/coil/liquid-pressure";
import { surfaceDistance } from "#component/finned-surface/family";
import { liquidDensity } from "#fluid/liquid";
import { type CoilBlock, casingFlange } from "#section/coil/block";
import { setInletAir } from "#section/coil/state";
import { type CoilRoom, createCoilRoom, solveAtFlow } from "#section/coil/valve";
import { actualAirflow } from "#section/station";
import { buildOf, circuitsOf } from "./built-coil.ts";
import {
  type CoilAlternative,
  type CoilChoice,
  type CoilRefusal,
  type CoilSorting,
  type CoilTask,
  coilRefusals,
  noCoilLimits,
  sortAlternatives,
} from "./coil-alternative.ts";
import { flowForChange, loadGuess, sensibleFlow } from "./coil-flow.ts";
import { coilPrice } from "./coil-price.ts";

/** K by which the leaving air may miss what is wanted: the flow for a rise is found to about as much. */
const leavingTolerance = 0.01;

interface Search {
  readonly task: CoilTask;
  readonly room: CoilRoom;
  readonly wanted: number;
  readonly presentPrice: number;
  readonly airflow: number;
  readonly peak: number;
  readonly density: number;
  /** kg/s at which the coil before had its change of temperature. */
  readonly last: { flow: number };
}

/** A search that goes on by steps, so that whoever runs it can show how far it is, and stop it. */
export interface CoilSearch {
  /** How many ways there are, and how many of them have been looked at. */
  readonly all: number;
  readonly looked: () => number;
  /** Looks at some more ways; false when none is left. */
  readonly step: (ways: number) => boolean;
  /** What was found so far. */
  readonly choice: (sorting: CoilSorting) => CoilChoice;
}

/**
 * Looks at every combination of surface, rows, fins, circuits that divide, and turbulators, and keeps those that meet the
 * duty within the limits. A coil is judged with its valve open: at the flow given, or at the flow that has the change of
 * temperature given.
 */
export function coilAlternatives(task: CoilTask, sorting: CoilSorting = "price"): CoilChoice {
  const search = startCoilSearch(task);
  search.step(Number.POSITIVE_INFINITY);
  return search.choice(sorting);
}

/** Begins the search: the present coil is solved, none of its alternatives yet. */
export function startCoilSearch(task: CoilTask): CoilSearch {
  const room = createCoilRoom();
  room.inlet.liquid = task.supply.liquid;
  room.inlet.liquidTemperature = task.supply.supplyTemperature;
  const base = {
    task,
    room,
    presentPrice: coilPrice(task.present.coil),
    airflow: actualAirflow(task.air),
    peak: task.air.peakToMeanVelocity,
    density: liquidDensity(task.supply.liquid, task.supply.supplyTemperature),
    last: { flow: 0 },
  };
  const open = { ...base, wanted: task.cools ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY };
  const present = examine({ ...open, task: { ...task, limits: noCoilLimits } }, task.present, task.present.coil);
  const reached = typeof present === "string" ? undefined : present.leavingDryBulb;
  const wanted = task.wanted ?? reached ?? task.air.dryBulb;
  const search = { ...base, wanted };
  const refused = Object.fromEntries(coilRefusals.map((each) => [each, 0])) as Record<CoilRefusal, number>;
  const candidates: CoilAlternative[] = [];
  const ways = task.blocks.flatMap((block) => [...combinations(task, block)].map((vary) => ({ block, vary })));
  let looked = 0;
  const step = (count: number): boolean => {
    for (const end = Math.min(ways.length, looked + count); looked < end; looked++) {
      const { block, vary } = ways[looked]!;
      const found = built(search, block, vary);
      if (typeof found === "string") refused[found]++;
      else candidates.push(found);
    }
    return looked < ways.length;
  };
  const choice = (sorting: CoilSorting): CoilChoice => {
    sortAlternatives(candidates, sorting);
    return { looked, refused, wanted, present: typeof present === "string" ? undefined : present, candidates };
  };
  return { all: ways.length, looked: () => looked, step, choice };
}

interface Variation {
  readonly rows: number;
  readonly circuits: number;
  readonly turbulators: boolean;
  readonly finsPerLength: number;
}

/** Fins vary fastest: the solution before is then a near start for the next. */
function* combinations(task: CoilTask, block: CoilBlock): Generator<Variation> {
  for (const rows of task.rows) {
    for (const circuits of circuitChoices(rows, block.coil.tubesPerRow)) {
      const isOdd = ((rows * block.coil.tubesPerRow) / circuits) % 2 === 1;
      if (task.passes !== undefined && isOdd !== (task.passes === "odd")) continue;
      for (const turbulators of task.turbulators) {
        for (const finsPerLength of task.fins) yield { rows, circuits, turbulators, finsPerLength };
      }
    }
  }
}

function built(search: Search, block: CoilBlock, vary: Variation): CoilAlternative | CoilRefusal {
  let coil: Coil;
  try {
    coil = buildCoil({ ...block.coil, ...vary });
  } catch (error) {
    if (error instanceof RangeError) return "not built";
    throw error;
  }
  return examine(search, block, coil);
}

/** What needs no solution comes first. */
function examine(search: Search, block: CoilBlock, coil: Coil): CoilAlternative | CoilRefusal {
  const { task, airflow } = search;
  const { limits, cools } = task;
  const faceVelocity = airflow / (coil.bank.faceArea * block.stacked);
  if (faceVelocity > limits.faceVelocity) return "face velocity";
  const carryOverShare = cools
    ? (faceVelocity * search.peak) / carryOverVelocity(coil.finsPerLength, coil.finMaterial)
    : 0;
  if (carryOverShare > 1 && limits !== noCoilLimits) return "carry-over";
  const depth = coil.bank.depth + 2 * casingFlange;
  if (depth > limits.depth) return "depth";
  const solved = solveOpen(search, block, coil);
  if (solved !== undefined) return solved;
  return judge(search, block, coil, { faceVelocity, carryOverShare, depth });
}

/** Solves a coil with its valve open; says why not where it will not do. */
function solveOpen(search: Search, block: CoilBlock, coil: Coil): CoilRefusal | undefined {
  const { task, room, density, wanted } = search;
  const { supply, limits, cools } = task;
  setInletAir(block, task.air, room.inlet);
  const perVelocity = density * coil.bore * coil.circuits;
  const alone = { ...block, coil };
  const isMissed = () => {
    const { leavingDryBulb } = room.performance;
    return cools ? leavingDryBulb > wanted + leavingTolerance : leavingDryBulb < wanted - leavingTolerance;
  };
  if (supply.massFlow !== undefined) {
    const flow = supply.massFlow / block.stacked;
    if (flow < limits.leastTubeVelocity * perVelocity || flow > limits.mostTubeVelocity * perVelocity)
      return "tube velocity";
    solveAtFlow(alone, flow, room);
    return isMissed() ? "leaving air" : undefined;
  }
  const change = supply.temperatureChange ?? 0;
  // A coil that meets the duty takes at least its load; more than the tubes may pass needs no solution.
  const load = loadGuess(room.inlet, wanted, change);
  const sensibly = sensibleFlow(room.inlet, wanted, change);
  if (sensibly > limits.mostTubeVelocity * perVelocity) return "tube velocity";
  const guess = Math.max(search.last.flow, load);
  const flow = flowForChange(alone, change, guess, room, isMissed);
  if (typeof flow === "string") return flow;
  search.last.flow = flow;
  const isWithin = flow >= limits.leastTubeVelocity * perVelocity && flow <= limits.mostTubeVelocity * perVelocity;
  if (!isWithin) return "tube velocity";
  return isMissed() ? "leaving air" : undefined;
}

/** Pressure drops of the coil just solved, and the record of it where they hold. */
function judge(
  search: Search,
  block: CoilBlock,
  coil: Coil,
  known: { readonly faceVelocity: number; readonly carryOverShare: number; readonly depth: number },
): CoilAlternative | CoilRefusal {
  const { task, room, density } = search;
  const { inlet, performance } = room;
  const { leavingDryBulb, leavingLiquid } = performance;
  const { dryAirFlow, dryBulb, humidityRatio, pressure } = inlet;
  const dry = dryAirPressureDrop(coil, dryAirFlow, humidityRatio, dryBulb, leavingDryBulb, pressure);
  const wetter = performance.wetShare * (wetToDry(coil, dryAirFlow, (dryBulb + leavingDryBulb) / 2) - 1);
  const airPressureDrop = dry * (1 + wetter);
  if (airPressureDrop > task.limits.airPressureDrop) return "air pressure drop";
  const mean = (inlet.liquidTemperature + leavingLiquid) / 2;
  const water = liquidPressureDrop(coil, inlet.liquid, inlet.liquidFlow, mean, task.connectionOf(coil));
  if (water > task.limits.liquidPressureDrop) return "water pressure drop";
  const liquidMassFlow = inlet.liquidFlow * block.stacked;
  return {
    ...buildOf(coil),
    ...circuitsOf(coil),
    present: isSame(coil, task.present.coil),
    priceIndex: (100 * coilPrice(coil)) / search.presentPrice,
    capacity: Math.abs(performance.heat) * block.stacked,
    sensibleCapacity: Math.abs(performance.sensibleHeat) * block.stacked,
    leavingDryBulb,
    leavingHumidityRatio: performance.leavingHumidityRatio,
    liquidMassFlow,
    liquidVolumeFlow: liquidMassFlow / density,
    liquidLeaving: leavingLiquid,
    tubeVelocity: performance.tubeVelocity,
    liquidPressureDrop: water,
    airPressureDrop,
    rangeDistance: surfaceDistance(coil.surface, coil.bank, performance.airReynolds),
    ...known,
  };
}

function isSame(a: Coil, b: Coil): boolean {
  return (
    a.surface.head.name === b.surface.head.name &&
    a.rows === b.rows &&
    Math.abs(a.finsPerLength / b.finsPerLength - 1) < 1e-6 &&
    a.circuits === b.circuits &&
    a.turbulators === b.turbulators
  );
}
