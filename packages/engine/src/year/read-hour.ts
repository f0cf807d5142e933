import { relativeHumidityFromHumidityRatio } from "#fluid/moist-air";
import type { ChilledWaterCoilRating } from "#section/chilled-water-coil/rate";
import type { SteamCoilFigures } from "#section/coil/steam";
import type { MixingRating, SectionRating } from "#section/contract";
import type { FanSectionRating } from "#section/fan/rate";
import type { HotWaterCoilRating } from "#section/hot-water-coil/rate";
import type { RecoveryCoilRating } from "#section/recovery-coil/rate";
import { absolutePressure, enthalpyFlow } from "#section/station";
import type { SteamHumidifierRating } from "#section/steam-humidifier/rate";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import type { HourRow } from "./hour-figures.ts";

/** Adds what a section of its kind used in the hour; gives W that went into the air by it. */
type Meter = (rating: never, row: HourRow) => number;

const steamCoilMeter = (rating: SteamCoilFigures, row: HourRow): number => {
  row.steamHeat += rating.capacity;
  row.steamFlow += rating.condensate;
  row.steamCondensate += rating.condensate;
  return rating.capacity;
};

const chilledWaterMeter = (rating: ChilledWaterCoilRating, row: HourRow): number => {
  const sign = rating.heatToAir > 0 ? -1 : 1;
  row.chilledWaterHeat += sign * rating.capacity;
  row.coilCondensate += rating.condensate;
  if (rating.condensate > 0) row.carryOver = Math.max(row.carryOver, rating.carryOverShare);
  return -sign * rating.capacity;
};

const heatingWaterMeter = (rating: HotWaterCoilRating, row: HourRow): number => {
  const sign = rating.heatToAir < 0 ? -1 : 1;
  row.heatingWaterHeat += sign * rating.capacity;
  return sign * rating.capacity;
};

const recoveryMeter = (rating: RecoveryCoilRating, row: HourRow): number => {
  const cools = rating.heatToAir < 0;
  row[cools ? "recoveredCooling" : "recoveredHeat"] += rating.capacity;
  return cools ? -rating.capacity : rating.capacity;
};

const humidifierMeter = (rating: SteamHumidifierRating, row: HourRow): number => {
  row.steamFlow += rating.steamUsed;
  row.steamCondensate += rating.condensate;
  row.humidifierWater += rating.steamToAir;
  return rating.condensate * rating.condensingHeat;
};

const fanMeter = (rating: FanSectionRating, row: HourRow): number => {
  row.fanPower += rating.electricPower;
  row.fanPressure += Math.max(0, -rating.totalPressureLoss);
  if (rating.fanSpeed > 0) {
    row.fanSteadiness = rating.flowToStable;
    row.springRatio = rating.frequencyRatio;
  }
  return rating.heatToAir;
};

const filterMeter = (rating: SectionRating, row: HourRow): number => {
  const { entering } = rating;
  const share = relativeHumidityFromHumidityRatio(entering.dryBulb, entering.humidityRatio, absolutePressure(entering));
  row.filterHumidity = Math.max(row.filterHumidity, entering.freeLiquid > 0 ? 1 : share);
  return rating.heatToAir;
};

/** By kind of section; what is not here uses nothing that is paid for. */
const meters: Readonly<Record<string, Meter>> = {
  "steam coil": steamCoilMeter,
  "steam coil with face and bypass": steamCoilMeter,
  "chilled-water coil": chilledWaterMeter,
  "hot-water coil": heatingWaterMeter,
  "recovery coil": recoveryMeter,
  "steam humidifier": humidifierMeter,
  fan: fanMeter,
  "filter bank": filterMeter,
};

/** Kinds with tubes that can freeze. */
const coilKinds = [
  "steam coil",
  "steam coil with face and bypass",
  "chilled-water coil",
  "hot-water coil",
  "recovery coil",
] as const;

/** A coil of the unit: its place and name. */
export interface CoilPlace {
  readonly index: number;
  readonly section: string;
  readonly kind: string;
}

/** The coils of a unit, in airflow order. */
export function coilsOf(unit: Unit): readonly CoilPlace[] {
  return unit.sections.flatMap(({ name, kind }, index) =>
    (coilKinds as readonly string[]).includes(kind) ? [{ index, section: name, kind }] : [],
  );
}

/** What every coil reports about freezing. */
interface FreezingCoil extends SectionRating {
  freezeMargin: number;
  capacity: number;
}

/**
 * K of a coil's coldest wall above freezing. A coil on steam that is shut off is empty, and cannot freeze: infinite. A
 * throttled one whose vacuum breaker stands open, or that is stalled, counts by the air that its cold tubes meet.
 */
export function freezeMarginOf(rating: UnitRating, { index, kind }: CoilPlace): number {
  const coil = rating.sections[index] as FreezingCoil;
  if (kind.startsWith("steam coil") && coil.capacity === 0) return Number.POSITIVE_INFINITY;
  return coil.freezeMargin;
}

/** Reads a solved unit into a row. Energy is held against what utilities gave, leaks and return air included. */
export function readHour(unit: Unit, rating: UnitRating, coils: readonly CoilPlace[], row: HourRow): void {
  clear(row);
  const { condition, supply, outdoors, sections, between } = rating;
  row.running = condition.flow.mode === "fan stopped" ? 0 : 1;
  row.solved = rating.solved ? 1 : 0;
  row.cooling = condition.season === "cooling" ? 1 : 0;
  row.dryAirFlow = supply.dryAirFlow;
  row.outsideAirShare = rating.outsideAirShare;
  row.filterLoading = condition.filterLoading;
  row.supplyDryBulb = supply.dryBulb;
  row.supplyHumidityRatio = supply.humidityRatio;
  const out = enthalpyFlow(supply);
  let energy = enthalpyFlow(outdoors) - out;
  let passing = Math.abs(out) + Math.abs(enthalpyFlow(outdoors));
  for (let index = 0; index < sections.length; index++) {
    const section = sections[index]!;
    const meter = meters[unit.sections[index]!.kind];
    const heat = meter === undefined ? section.heatToAir : meter(section as never, row);
    const returned = (section as Partial<MixingRating>).returnEnthalpyFlow ?? 0;
    const leaked = enthalpyFlow(between[index]!) - enthalpyFlow(section.leaving);
    energy += heat + section.waterEnthalpyToAir + returned + leaked;
    passing += Math.abs(heat) + Math.abs(returned);
  }
  row.imbalance = energy;
  row.throughput = passing;
  let margin = Number.POSITIVE_INFINITY;
  for (const coil of coils) margin = Math.min(margin, freezeMarginOf(rating, coil));
  row.freezeMargin = margin;
}

function clear(row: HourRow): void {
  for (const name in row) row[name as keyof HourRow] = 0;
}
