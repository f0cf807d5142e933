import type { Condition } from "@oncethrough/engine/duty/condition";
import { dewPointFromHumidityRatio } from "@oncethrough/engine/fluid/dew-point";
import { enthalpyFromHumidityRatio, relativeHumidityFromHumidityRatio } from "@oncethrough/engine/fluid/moist-air";
import { wetBulbFromHumidityRatio } from "@oncethrough/engine/fluid/wet-bulb";
import type { Job } from "@oncethrough/engine/job/job";
import type { Air } from "@oncethrough/engine/section/air";
import type { SectionRating, SectionRole, WorkingTable } from "@oncethrough/engine/section/contract";
import { absolutePressure, actualAirflow } from "@oncethrough/engine/section/station";
import { type FilterState, filterStates } from "@oncethrough/engine/unit/filter-states";
import {
  atLargestFlow,
  type LargestFlow,
  largestFlowConditions,
  largestFlowOf,
} from "@oncethrough/engine/unit/largest-flow";
import { type PressureLedger, pressureLedger } from "@oncethrough/engine/unit/ledger";
import { ratingsOf } from "@oncethrough/engine/unit/rate-unit";
import type { PlacedDeclared, PlacedNote, PlacedShortfall, Station, UnitRating } from "@oncethrough/engine/unit/rating";
import {
  declaredOf,
  type EvaluatedWorking,
  notesOf,
  shortfallsOf,
  stationsOf,
  workingOf,
  workingTablesOf,
} from "@oncethrough/engine/unit/report";
import type { Unit, UnitSection } from "@oncethrough/engine/unit/unit";

/** What `oncethrough rate --json` prints; the tables for people are printed from the same figures. All in SI. */
export interface RateOutput {
  readonly format: "oncethrough rating 1";
  readonly tag: string;
  readonly conditions: readonly ConditionOutput[];
  /** With filters clean and the fan as fast as any condition of the job asks, in the weather of each clean condition. */
  readonly largestFlows: readonly LargestFlowOutput[];
}

/** The most air that can come in a condition's weather. */
export interface LargestFlowOutput extends LargestFlow {
  /** Key and name of the condition whose weather it is. */
  readonly condition: string;
  readonly name: string;
}

/** A state of air. */
export interface AirOutput {
  readonly dryBulb: number;
  readonly wetBulb: number;
  readonly dewPoint: number;
  readonly relativeHumidity: number;
  readonly humidityRatio: number;
  readonly enthalpy: number;
}

/** The air behind a section, and where that is. */
export interface StationOutput extends AirOutput {
  readonly after: string;
  readonly position: number;
  readonly dryAirFlow: number;
  readonly freeLiquid: number;
  readonly coldestFilament: number;
  readonly staticPressure: number;
  readonly totalPressure: number;
  readonly wallPressure: number;
  readonly velocity: number;
  readonly airflow: number;
}

/** A section's balances and the figures of its kind. */
export interface SectionOutput {
  readonly name: string;
  readonly kind: string;
  readonly totalPressureLoss: number;
  readonly heatToAir: number;
  readonly waterToAir: number;
  readonly figures: Readonly<Record<string, number>>;
}

/** The unit solved at one condition. */
export interface ConditionOutput {
  readonly key: string;
  readonly name: string;
  readonly season: "cooling" | "heating";
  readonly flow: Condition["flow"]["mode"];
  /** Fans that stand while the others run. */
  readonly fansOut: number;
  readonly filterLoading: number;
  readonly barometricPressure: number;
  readonly solved: boolean;
  readonly reason: string;
  readonly outdoors: AirOutput;
  readonly supply: AirOutput & {
    readonly dryAirFlow: number;
    readonly actualAirflow: number;
    readonly standardAirflow: number;
    readonly outsideAirShare: number;
  };
  readonly fan: {
    readonly speed: number;
    readonly electricPower: number;
    readonly externalStaticNeeded: number;
    readonly externalStaticHeld: number;
  };
  /** W that the cooling coils take from the air and the heating coils give to it: what water and steam have to bring. */
  readonly cooling: number;
  readonly heating: number;
  readonly stations: readonly StationOutput[];
  readonly sections: readonly SectionOutput[];
  readonly shortfalls: readonly PlacedShortfall[];
  readonly notes: readonly PlacedNote[];
  /** Suppliers' declared ratings beside ours, where the job holds any. */
  readonly declared?: readonly PlacedDeclared[];
  readonly working?: {
    readonly section: string;
    readonly lines: readonly EvaluatedWorking[];
    readonly tables: readonly WorkingTable[];
  };
  readonly ledger?: PressureLedger;
  /** With filters clean, half loaded and at change-out. */
  readonly filterStates?: readonly FilterState[];
}

/** What is wanted besides: the arithmetic of a section by its name, the pressure ledger. */
export interface Wanted {
  readonly working: string | undefined;
  readonly ledger: boolean;
}

/** Solves the unit of a job at its conditions and at its largest flow, and tells of those that are asked for. */
export function rateJob(job: Job, conditions: readonly Condition[], wanted: Wanted): RateOutput {
  const ratings = ratingsOf(job.unit, job.conditions);
  return {
    format: "oncethrough rating 1",
    tag: job.tag,
    conditions: ratings
      .filter(({ condition }) => conditions.includes(condition))
      .map((rating) => conditionOutput(job.unit, rating, wanted)),
    largestFlows: largestFlowsOf(job.unit, ratings),
  };
}

function largestFlowsOf(unit: Unit, ratings: readonly UnitRating[]): readonly LargestFlowOutput[] {
  const most = ratingsOf(unit, largestFlowConditions(ratings), ratings[0]);
  return most.flatMap((rating): readonly LargestFlowOutput[] => {
    const of = ratings.find(({ condition }) => atLargestFlow(condition, 0).key === rating.condition.key)!.condition;
    return rating.solved ? [{ condition: of.key, name: of.name, ...largestFlowOf(unit, rating) }] : [];
  });
}

function conditionOutput(unit: Unit, rating: UnitRating, wanted: Wanted): ConditionOutput {
  const { condition } = rating;
  const { working, ledger } = wanted;
  const declared = declaredOf(unit, rating);
  const lines = working === undefined ? undefined : workingOf(unit, rating, working);
  return {
    key: condition.key,
    name: condition.name,
    season: condition.season,
    flow: condition.flow.mode,
    fansOut: condition.fansOut?.count ?? 0,
    filterLoading: condition.filterLoading,
    barometricPressure: condition.barometricPressure,
    solved: rating.solved,
    reason: rating.reason,
    outdoors: airOutput(rating.outdoors),
    supply: {
      ...airOutput(rating.supply),
      dryAirFlow: rating.supply.dryAirFlow,
      actualAirflow: rating.supplyActualAirflow,
      standardAirflow: rating.supplyStandardAirflow,
      outsideAirShare: rating.outsideAirShare,
    },
    fan: {
      speed: rating.operation.fanSpeed,
      electricPower: rating.fanElectricPower,
      externalStaticNeeded: rating.externalStaticNeeded,
      externalStaticHeld: rating.externalStaticHeld,
    },
    ...coilHeats(unit, rating),
    stations: stationsOf(unit, rating).map(stationOutput),
    sections: unit.sections.map((section, index) => sectionOutput(section, rating.sections[index])),
    shortfalls: shortfallsOf(unit, rating),
    notes: notesOf(unit, rating),
    ...(declared.length === 0 ? {} : { declared }),
    ...(working === undefined || lines === undefined
      ? {}
      : { working: { section: working, lines, tables: workingTablesOf(unit, rating, working) } }),
    ...(ledger ? { ledger: pressureLedger(unit, rating), filterStates: filterStates(unit, condition) } : {}),
  };
}

/** The state of air at a station. */
export function airOutput(air: Air): AirOutput {
  const { dryBulb, humidityRatio } = air;
  const pressure = absolutePressure(air);
  return {
    dryBulb,
    wetBulb: wetBulbFromHumidityRatio(dryBulb, humidityRatio, pressure),
    dewPoint: dewPointFromHumidityRatio(humidityRatio, pressure),
    relativeHumidity: relativeHumidityFromHumidityRatio(dryBulb, humidityRatio, pressure),
    humidityRatio,
    enthalpy: enthalpyFromHumidityRatio(dryBulb, humidityRatio),
  };
}

function stationOutput({ after, position, air, velocity, wallPressure }: Station): StationOutput {
  return {
    after,
    position,
    ...airOutput(air),
    dryAirFlow: air.dryAirFlow,
    freeLiquid: air.freeLiquid,
    coldestFilament: air.coldestFilament,
    staticPressure: air.staticPressure,
    totalPressure: air.totalPressure,
    wallPressure,
    velocity,
    airflow: actualAirflow(air),
  };
}

function sectionOutput(section: UnitSection, record: SectionRating | undefined): SectionOutput {
  const values = (record ?? {}) as unknown as Readonly<Record<string, unknown>>;
  const figures = section.behaviour.figures.flatMap(({ figure }) => {
    const value = values[figure];
    return typeof value === "number" ? [[figure, value] as const] : [];
  });
  return {
    name: section.name,
    kind: section.kind,
    totalPressureLoss: record?.totalPressureLoss ?? 0,
    heatToAir: record?.heatToAir ?? 0,
    waterToAir: record?.waterToAir ?? 0,
    figures: Object.fromEntries(figures),
  };
}

function coilHeats(unit: Unit, rating: UnitRating): { cooling: number; heating: number } {
  const heatOf = (wanted: SectionRole) =>
    unit.sections.reduce(
      (sum, { behaviour }, index) => sum + (behaviour.role === wanted ? (rating.sections[index]?.heatToAir ?? 0) : 0),
      0,
    );
  return { cooling: 0 - heatOf("cooling"), heating: heatOf("heating") };
}
