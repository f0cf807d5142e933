import { carryOverVelocity } from "#component/coil/carry-over";
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
import { louverRecords, metresOf } from "./intake.ts";
import { against, chooseCasing, preparedSection, readValues, sectionsOfKind, type Workroom } from "./workroom.ts";

/** m: steps in which cabinets are made, finer where room is short; smallest and largest clear sides. */
const steps = { usual: 6 * inch, fine: 3 * inch } as const;
const smallest = 24 * inch;
const widest = 240 * inch;
const highest = 168 * inch;
/** m of the rail that most traps ask for; what is really built is measured when it is judged. */
const usualRail = 7 * inch;
/** m of roof beyond the walls: as drawn, and where the road is narrow. */
const overhang = { usual: 3 * inch, narrow: 1 * inch } as const;

/** What the fastest spot of a coil face, on clean filters at the highest speed, has over the mean at design; a first guess. */
const peakOverMean = 1.19;

/** A cross-section that would do, with what it comes to. */
export interface CabinetChoice {
  readonly frame: Frame;
  readonly stacked: number;
  readonly coolingVelocity: number | undefined;
  readonly filterVelocity: number;
  readonly onsetShare: number;
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
 * Cross-sections in the shop's steps that keep the limits of face, filter and louver velocity and the site's size, least
 * panel first; each is judged when it is asked for, and there are thousands.
 */
export function* cabinetChoices(room: Workroom): Generator<CabinetChoice> {
  const { mostWidth, mostHeight } = mostSides(room);
  const sides = (fixed: DraftValue | undefined, most: number) => {
    const given = fixed === undefined ? undefined : frameSide(room, fixed);
    if (given !== undefined) return [given];
    const step = room.limits.relaxed ? steps.fine : steps.usual;
    const count = Math.floor((most - smallest) / step + 1e-6);
    return Array.from({ length: Math.max(0, count + 1) }, (_, index) => smallest + index * step);
  };
  const heights = sides(room.fixed.casing.height, mostHeight);
  const frames = sides(room.fixed.casing.width, mostWidth)
    .flatMap((width) => heights.map((height): Frame => ({ width, height, hand: "right" })))
    .map((frame) => ({ frame, cost: costOf(frame) }))
    .sort((a, b) => a.cost - b.cost);
  const judge = judgeOf(room);
  for (const { frame } of frames) {
    const choice = judge(frame);
    if (choice !== undefined) yield choice;
  }
}

/** m: what grows with the panels around a cross-section, and with a shape that is awkward to build. */
function costOf({ width, height }: Frame): number {
  const shape = width / height;
  return width + height + Math.max(0, shape - 1.7) + Math.max(0, 1 / shape - 1);
}

/** m of clear width and height that site and road take. */
function mostSides(room: Workroom): { readonly mostWidth: number; readonly mostHeight: number } {
  const { limits } = room.duty;
  const { width, height } = beyondFrame(room, Math.min(widest, limits.width ?? limits.shippingWidth));
  const least = (site: number | undefined, road: number) => Math.min(site ?? Number.POSITIVE_INFINITY, road);
  return {
    mostWidth: Math.min(widest, least(limits.width, limits.shippingWidth) - width, room.limits.mostWidth),
    mostHeight: Math.min(highest, least(limits.height, limits.shippingHeight) - height, room.limits.mostHeight),
  };
}

/** m that panels, rail and roof add to a clear cross-section; of a roof as wide as said, with its gap, rise and edge. */
export function beyondFrame(
  room: Pick<Workroom, "duty" | "draft">,
  width: number,
): { readonly width: number; readonly height: number } {
  const panels = 2 * metresOf(room.draft.casing["panel thickness"] ?? "2 in");
  if (!hasRoof(room)) return { width: panels, height: panels + usualRail };
  return { width: panels + 2 * overhang.narrow, height: panels + usualRail + 0.075 + 0.02 * 0.8 * width };
}

/** m² of the largest cross-section that site and road take. */
export function largestCabinet(room: Workroom): number {
  const { mostWidth, mostHeight } = mostSides(room);
  return Math.max(0, mostWidth) * Math.max(0, mostHeight);
}

function hasRoof({ duty }: Pick<Workroom, "duty">): boolean {
  return duty.site.placement !== "indoor";
}

/** A small overhang where road or site take no more of width. */
function chooseOverhang(room: Workroom, frame: Frame): void {
  const { width, shippingWidth } = room.duty.limits;
  const most = Math.min(width ?? shippingWidth, shippingWidth);
  const walls = frame.width + 2 * metresOf(room.draft.casing["panel thickness"] ?? "2 in");
  if (!hasRoof(room) || walls + 2 * overhang.usual <= most) return;
  const because = `what is left beside the walls of ${printQuantity(most, "length", "ip")}; with a drip edge`;
  chooseCasing(room, { "roof overhang": "1 in" }, because);
}

function frameSide(room: Workroom, typed: DraftValue): number | undefined {
  const read = readValues(room, widthReader, { width: typed });
  return read?.width as number | undefined;
}

const widthReader = {
  name: "width",
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
  return (frame) => {
    const area = frame.width * frame.height;
    if (area < room.limits.leastArea) return undefined;
    if (area < (0.7 * airflow) / Math.max(room.limits.coolingVelocity, room.limits.filterVelocity)) return undefined;
    const onset = louvers.map(
      (louver) => airflow / louverFreeArea(louver, frame.width, frame.height) / louver.onsetVelocity,
    );
    const onsetShare = hasLouver ? Math.min(...onset) : 0;
    if (!(onsetShare <= room.limits.louverOnsetShare)) return undefined;
    const filterVelocity = Math.max(0, ...bankValues.map((values) => velocityOnPanels(bank, values, frame, airflow)));
    if (filterVelocity > room.limits.filterVelocity) return undefined;
    const stack = coilValues === undefined ? undefined : stackFor(room, coil, coilValues, frame, airflow);
    if (coilValues !== undefined && stack === undefined) return undefined;
    return { frame, stacked: stack?.stacked ?? 1, coolingVelocity: stack?.velocity, filterVelocity, onsetShare };
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
    // Where room is short an eliminator may catch what a coat makes the fins throw.
    const { finsPerLength } = design.block.coil;
    const thrown = room.limits.relaxed ? carryOverVelocity(finsPerLength, "aluminium") : design.carryOverVelocity;
    if (velocity > room.limits.coolingVelocity || peakOverMean * velocity > thrown) return undefined;
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
  chooseOverhang(room, frame);
}
