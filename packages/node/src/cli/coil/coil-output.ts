import { allCooling, allHeating } from "@oncethrough/engine/design/section-coil-task";
import { humidityRatioOfAirState } from "@oncethrough/engine/duty/air-state";
import type { Condition, ExhaustAir, LiquidSupply, Utilities } from "@oncethrough/engine/duty/condition";
import { liquidDensity } from "@oncethrough/engine/fluid/liquid";
import { specificVolume } from "@oncethrough/engine/fluid/moist-air";
import { standardAirDensity } from "@oncethrough/engine/quantity/standard-air";
import { type Air, createAir } from "@oncethrough/engine/section/air";
import type {
  Frame,
  Note,
  Operation,
  SectionCondition,
  SectionKind,
  SectionRating,
  Shortfall,
  WorkingTable,
} from "@oncethrough/engine/section/contract";
import { declaredNotes } from "@oncethrough/engine/section/declared-notes";
import { rateSection } from "@oncethrough/engine/section/rate-section";
import { actualAirflow } from "@oncethrough/engine/section/station";
import type { EvaluatedWorking } from "@oncethrough/engine/unit/report";
import { evaluateWorking } from "@oncethrough/engine/unit/report";
import { type AirOutput, airOutput } from "../rate/rate-output.ts";
import { type CoilValues, coilHumidityRatio, coilPressure } from "./coil-file.ts";

/** What `oncethrough coil --json` prints, in SI. */
export interface CoilOutput {
  readonly format: "oncethrough coil rating 1";
  readonly kind: string;
  readonly barometricPressure: number;
  readonly dryAirFlow: number;
  readonly standardAirflow: number;
  readonly actualAirflow: number;
  readonly entering: AirOutput;
  readonly leaving: AirOutput;
  /** W that water or steam gives to the air; negative where the coil cools. */
  readonly totalHeat: number;
  /** kg/s. */
  readonly condensate: number;
  /** W that the condensate carries away. */
  readonly condensateHeat: number;
  readonly totalPressureLoss: number;
  readonly figures: Readonly<Record<string, number>>;
  readonly shortfalls: readonly Shortfall[];
  readonly notes: readonly Note[];
  readonly working?: readonly EvaluatedWorking[];
  readonly tables?: readonly WorkingTable[];
}

/** m; a cabinet that holds every coil whose own size is given. */
export const roomyCabinet = { width: 9, height: 6 };

/**
 * Rates a coil by itself.
 *
 * @throws SectionProblem when the coil cannot be built
 */
export function rateCoil(kind: SectionKind, values: CoilValues, withWorking: boolean): CoilOutput {
  const frame: Frame = { ...(values.cabinet ?? roomyCabinet), hand: "right" };
  const design = kind.prepare(values.coil as never, frame);
  const rating = kind.createRating();
  const air = enteringAir(values, 1);
  air.dryAirFlow = dryAirFlowOf(values, () => {
    kind.rate(design, air, coilCondition(kind, values, 1), rating);
    return actualAirflow(air) / rating.faceVelocity;
  });
  const at = coilCondition(kind, values, air.dryAirFlow);
  rateSection(kind, design, air, at, rating);
  return coilOutput(kind, design, rating, at, values, withWorking);
}

function coilOutput(
  kind: SectionKind,
  design: unknown,
  rating: SectionRating,
  at: SectionCondition,
  values: CoilValues,
  withWorking: boolean,
): CoilOutput {
  const { entering, leaving } = rating;
  const figures = kind.figures.flatMap(({ figure }) => {
    const value = (rating as unknown as Readonly<Record<string, unknown>>)[figure];
    return typeof value === "number" ? [[figure, value] as const] : [];
  });
  return {
    format: "oncethrough coil rating 1",
    kind: kind.name,
    barometricPressure: entering.barometricPressure,
    dryAirFlow: entering.dryAirFlow,
    standardAirflow: entering.dryAirFlow / standardAirDensity,
    actualAirflow: actualAirflow(entering),
    entering: airOutput(entering),
    leaving: airOutput(leaving),
    totalHeat: rating.heatToAir,
    condensate: 0 - rating.waterToAir,
    condensateHeat: 0 - rating.waterEnthalpyToAir,
    totalPressureLoss: rating.totalPressureLoss,
    figures: Object.fromEntries(figures),
    // Without a wish there is nothing to miss.
    shortfalls: values.air.leaving === undefined ? [] : (kind.shortfalls?.(design, rating, at) ?? []),
    notes: [...declaredNotes(kind.declared?.(design, rating, at)), ...(kind.notes?.(design, rating, at) ?? [])],
    ...(withWorking
      ? {
          working: kind.working.map((line) => evaluateWorking(line, design, rating)),
          tables: kind.workingTables?.(design, rating, at) ?? [],
        }
      : {}),
  };
}

/** The air before the coil. */
export function enteringAir(values: CoilValues, dryAirFlow: number): Air {
  return Object.assign(createAir(), {
    dryAirFlow,
    dryBulb: values.air.dryBulb,
    coldestFilament: values.air.dryBulb,
    humidityRatio: coilHumidityRatio(values.air),
    barometricPressure: coilPressure(values.air),
  });
}

/** kg/s of dry air; `faceArea` is asked only where a face velocity is given. */
export function dryAirFlowOf(values: CoilValues, faceArea: () => number): number {
  const { airflow, faceVelocity, basis, dryBulb } = values.air;
  const flow = airflow ?? (faceVelocity ?? 0) * faceArea();
  if (basis === "standard") return flow * standardAirDensity;
  return flow / specificVolume(dryBulb, coilHumidityRatio(values.air), coilPressure(values.air));
}

/** Whether the coil is there to cool: a loop cools air that is warmer than the exhaust. */
function coolsAir(kind: SectionKind, { air, exhaust }: CoilValues): boolean {
  return kind.role === "cooling" || (exhaust !== undefined && exhaust.dryBulb < air.dryBulb);
}

function exhaustOf({ exhaust }: CoilValues, dryAirFlow: number, pressure: number): ExhaustAir | undefined {
  if (exhaust === undefined) return undefined;
  const { airflow, dryBulb } = exhaust;
  const humidityRatio = humidityRatioOfAirState(exhaust, pressure);
  return { dryAirFlow: airflow === undefined ? dryAirFlow : airflow * standardAirDensity, dryBulb, humidityRatio };
}

/** The condition of a coil by itself, its own dry air at `dryAirFlow` kg/s. */
export function coilCondition(kind: SectionKind, values: CoilValues, dryAirFlow: number): SectionCondition {
  const pressure = coilPressure(values.air);
  const humidityRatio = coilHumidityRatio(values.air);
  const { dryBulb, leaving } = values.air;
  const cools = coolsAir(kind, values);
  const condition: Condition = {
    name: "coil by itself",
    key: "coil",
    season: cools ? "cooling" : "heating",
    barometricPressure: pressure,
    outdoor: { dryBulb, humidityRatio, windSpeed: 0, rain: 0 },
    returnAir: { dryBulb, humidityRatio, staticPressure: 0, outsideAirShare: 1 },
    surroundings: { dryBulb, humidityRatio },
    flow: { mode: "flow held", dryAirFlow: 1 },
    filterLoading: 0,
    setPoints: {
      heatingCoilLeaving: cools ? undefined : leaving,
      coolingCoilLeaving: cools ? leaving : undefined,
      supply: undefined,
      supplyMaximumHumidityRatio: undefined,
      supplyMinimumHumidityRatio: undefined,
    },
    utilities: coilUtilities(cools, values, pressure),
    externalStatic: { atDesign: 0, fixed: 0, designDryAirFlow: 1 },
    exhaust: exhaustOf(values, dryAirFlow, pressure),
  };
  const operation: Operation = {
    fanSpeed: 15,
    fansRunning: true,
    returnDryAirFlow: 0,
    dampers: "as set",
    returnDamperStop: "none",
    coolingLeaving: cools ? (leaving ?? allCooling) : undefined,
    heatingLeaving: cools ? undefined : (leaving ?? allHeating),
    humidifierLeaving: undefined,
  };
  return { condition, operation };
}

function coilUtilities(cools: boolean, { water, steam }: CoilValues, pressure: number): Utilities {
  const liquid = water && liquidSupply(water);
  return {
    chilledWater: cools ? liquid : undefined,
    heatingWater: cools ? undefined : liquid,
    steam: steam && {
      pressure: pressure + steam.pressureAtCoil,
      condensateReturnPressure: pressure + steam.condensateReturnPressure,
      valveFails: "open",
    },
  };
}

/** The file's water as a supply. */
export function liquidSupply(water: NonNullable<CoilValues["water"]>): LiquidSupply {
  const liquid =
    water.glycol === "none"
      ? ({ substance: "water", massFraction: 0 } as const)
      : { substance: water.glycol, massFraction: water.concentration };
  return {
    liquid,
    supplyTemperature: water.supply,
    temperatureChange: water.rise ?? water.drop,
    massFlow: water.flow === undefined ? undefined : water.flow * liquidDensity(liquid, water.supply),
    valveFails: "closed",
    pumpRunsWhenStopped: false,
  };
}
