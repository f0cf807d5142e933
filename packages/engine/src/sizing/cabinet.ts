import { louverFreeArea } from "#component/louver";
import { conditionOfDay, designDays } from "#duty/standard-conditions";
import { specificVolume } from "#fluid/moist-air";
import { metresPerInch as inch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import type { ChilledWaterCoilDesign } from "#section/chilled-water-coil/design";
import { chilledWaterCoil } from "#section/chilled-water-coil/kind";
import type { Frame, SectionKind } from "#section/contract";
import type { FilterBankDesign } from "#section/filter-bank/design";
import { filterBank } from "#section/filter-bank/kind";
import type { DraftValue } from "./draft.ts";
import { louverRecords } from "./intake.ts";
import { against, chooseCasing, preparedSection, readValues, sectionsOfKind, type Workroom } from "./workroom.ts";

/** m: steps in which cabinets are made, smallest and largest clear sides. */
const step = 6 * inch;
const smallest = 24 * inch;
const widest = 240 * inch;
const highest = 168 * inch;
/** m of rail, roof and two panels beyond the clear height; of two panels beyond the clear width. */
const beyondHeight = 0.45;
const beyondWidth = 0.11;

/** What the fastest spot of a coil face, on clean filters at the highest speed, has over the mean at design; a first guess. */
const peakOverMean = 1.19;

/** A cross-section that would do, with what it comes to. */
export interface CabinetChoice {
  readonly frame: Frame;
  readonly stacked: number;
  readonly coolingVelocity: number | undefined;
  readonly filterVelocity: number;
  readonly onsetShare: number;
  readonly cost: number;
}

/** m³/s of the largest summer airflow before the cooling coil, at 500 Pa of suction. */
export function largestAirflow(room: Workroom): number {
  return Math.max(
    ...designDays(room.duty).map((day) => {
      const condition = conditionOfDay(room.duty, day, undefined);
      const { outdoor, returnAir, externalStatic, barometricPressure } = condition;
      const share = returnAir.outsideAirShare;
      const volume = (dryBulb: number, humidityRatio: number) =>
        specificVolume(dryBulb, humidityRatio, barometricPressure - 500);
      return (
        externalStatic.designDryAirFlow *
        (share * volume(outdoor.dryBulb, outdoor.humidityRatio) +
          (1 - share) * volume(returnAir.dryBulb, returnAir.humidityRatio))
      );
    }),
  );
}

/**
 * Every cross-section in the shop's steps that keeps the limits of face, filter and louver velocity and the site's size,
 * least panel first; those that the road does not take come last.
 */
export function cabinetChoices(room: Workroom): readonly CabinetChoice[] {
  const judge = judgeOf(room);
  const { limits } = room.duty;
  const sides = (fixed: DraftValue | undefined, most: number) => {
    const given = fixed === undefined ? undefined : frameSide(room, fixed);
    if (given !== undefined) return [given];
    const count = Math.floor((most - smallest) / step + 1e-6);
    return Array.from({ length: Math.max(0, count + 1) }, (_, index) => smallest + index * step);
  };
  const mostWidth = Math.min(widest, (limits.width ?? Number.POSITIVE_INFINITY) - beyondWidth);
  const mostHeight = Math.min(highest, (limits.height ?? Number.POSITIVE_INFINITY) - beyondHeight);
  const choices: CabinetChoice[] = [];
  for (const width of sides(room.fixed.casing.width, mostWidth)) {
    for (const height of sides(room.fixed.casing.height, mostHeight)) {
      const choice = judge({ width, height, hand: "right" });
      if (choice !== undefined) choices.push(choice);
    }
  }
  return choices.sort((a, b) => a.cost - b.cost);
}

function frameSide(room: Workroom, typed: DraftValue): number | undefined {
  const read = readValues(room, widthReader, { width: typed });
  return read?.width as number | undefined;
}

const widthReader = {
  fields: { width: { type: "quantity", quantity: "length", meaning: "" } },
} as unknown as SectionKind;

/** Judges one cross-section; undefined when a limit is broken. Values are read once. */
function judgeOf(room: Workroom): (frame: Frame) => CabinetChoice | undefined {
  const airflow = largestAirflow(room);
  const cooling = sectionsOfKind(room, "chilled-water coil")[0];
  const filters = sectionsOfKind(room, "filter bank");
  const hasLouver = sectionsOfKind(room, "louver").length > 0;
  const coil = chilledWaterCoil as unknown as SectionKind;
  const bank = filterBank as unknown as SectionKind;
  const coilValues = cooling && readValues(room, coil, { fins: "10 per in", ...cooling.values });
  const bankValues = filters.map((each) => readValues(room, bank, each.values));
  const louvers = louverRecords(room);
  const { shippingWidth, shippingHeight } = room.duty.limits;
  return (frame) => {
    const area = frame.width * frame.height;
    if (area < (0.7 * airflow) / Math.max(room.limits.coolingVelocity, room.limits.filterVelocity)) return undefined;
    const filterVelocity = Math.max(0, ...bankValues.map((values) => velocityOnPanels(bank, values, frame, airflow)));
    if (filterVelocity > room.limits.filterVelocity) return undefined;
    const onset = louvers.map(
      (louver) => airflow / louverFreeArea(louver, frame.width, frame.height) / louver.onsetVelocity,
    );
    const onsetShare = hasLouver ? Math.min(...onset) : 0;
    if (!(onsetShare <= room.limits.louverOnsetShare)) return undefined;
    const stack = coilValues === undefined ? undefined : stackFor(room, coil, coilValues, frame, airflow);
    if (coilValues !== undefined && stack === undefined) return undefined;
    const over =
      Math.max(0, frame.width + beyondWidth - shippingWidth) +
      Math.max(0, frame.height + beyondHeight - shippingHeight);
    const shape = frame.width / frame.height;
    const awry = Math.max(0, shape - 1.7) + Math.max(0, 1 / shape - 1);
    const cost = frame.width + frame.height + awry + (over > 0 ? 100 + 5 * over : 0);
    return { frame, stacked: stack?.stacked ?? 1, coolingVelocity: stack?.velocity, filterVelocity, onsetShare, cost };
  };
}

function velocityOnPanels(
  kind: SectionKind,
  values: Readonly<Record<string, unknown>> | undefined,
  frame: Frame,
  airflow: number,
): number {
  const design = values && preparedSection<FilterBankDesign>(kind, values, frame);
  return design === undefined ? Number.POSITIVE_INFINITY : airflow / design.panelArea;
}

/** The fewest coils one above the other whose fins stand no higher than one pan takes. */
function stackFor(
  room: Workroom,
  kind: SectionKind,
  values: Readonly<Record<string, unknown>>,
  frame: Frame,
  airflow: number,
): { readonly stacked: number; readonly velocity: number } | undefined {
  for (let stacked = 1; stacked <= 6; stacked++) {
    const design = preparedSection<ChilledWaterCoilDesign>(kind, { ...values, stacked }, frame);
    if (design === undefined) return undefined;
    const velocity = airflow / design.block.faceArea;
    if (velocity > room.limits.coolingVelocity || peakOverMean * velocity > design.carryOverVelocity) return undefined;
    if (design.block.coil.bank.finnedHeight <= room.limits.panPitch) return { stacked, velocity };
  }
  return undefined;
}

/** Takes a cross-section. */
export function takeCabinet(room: Workroom, choice: CabinetChoice): void {
  const { frame, coolingVelocity, filterVelocity, onsetShare } = choice;
  const inches = (metres: number) => `${Math.round((metres / inch) * 100) / 100} in`;
  const reasons = [
    ...(coolingVelocity === undefined
      ? []
      : [against("cooling face velocity", coolingVelocity, room.limits.coolingVelocity, "velocity")]),
    against("velocity on filters", filterVelocity, room.limits.filterVelocity, "velocity"),
    ...(onsetShare === 0
      ? []
      : [
          `louver's free velocity ${printQuantity(onsetShare, "share", "ip")} of that at which water comes through, against ${printQuantity(room.limits.louverOnsetShare, "share", "ip")}`,
        ]),
  ];
  chooseCasing(room, { width: inches(frame.width), height: inches(frame.height) }, reasons.join("; "));
}
