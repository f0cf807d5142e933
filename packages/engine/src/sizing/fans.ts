import type { FanWheel } from "#component/fan-wheel";
import type { Motor } from "#component/motor";
import { type FanCandidate, selectFans } from "#design/fan-selection";
import { metresPerInch, wattsPerHorsepower } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import type { FanValues } from "#section/fan/fields";
import { standardFanDiameters } from "#standard/fan-diameter";
import type { UnitRating } from "#unit/rating";
import type { DraftSection, DraftValue } from "./draft.ts";
import { indexOf, runningRatings } from "./trial.ts";
import { choose, readValues, type Solved, sectionsOfKind, type Workroom } from "./workroom.ts";

/** Motors looked at: enclosed, of the speeds that fans are driven at. */
const motors = [
  "typical premium 4 pole enclosed",
  "typical premium 2 pole enclosed",
  "typical premium 6 pole enclosed",
];
/** Share of electric power within which the shorter and cheaper fan is taken. */
const alike = 0.03;

/** A fan that surely fits the cabinet, so that the first walk has one. */
export function chooseFanFirst(
  room: Workroom,
  frame: { readonly width: number; readonly height: number },
  airflow: number,
): void {
  const isArray = room.duty.redundancy.airflowWithOneFanOut > 0;
  for (const section of sectionsOfKind(room, "fan")) {
    const inches = Math.max(12, Math.min(24.5, (Math.min(frame.width, frame.height) / metresPerInch) * 0.25));
    const size = [12.25, 13.5, 15, 16.5, 18.25, 20, 22.25, 24.5].filter((each) => each <= inches + 0.3).at(-1)!;
    const values: Record<string, DraftValue> = {
      wheel: "typical airfoil plenum wheel",
      diameter: `${size} in`,
      class: "III",
      count: firstCount(frame, size * metresPerInch, airflow, isArray ? 2 : 1),
      drive: "direct",
      motor: motors[1]!,
      "motor power": "20 hp",
    };
    choose(room, section, values, "to begin with");
    if (isArray)
      choose(room, section, { "backdraft dampers": true }, "a standing fan must not let the others' air back");
  }
}

/** m/s through a wheel's inlet circle at which any of them still makes pressure. */
const easyVelocity = 12;

/** The smallest even array of wheels that the airflow passes with ease and the cabinet takes. */
function firstCount(
  frame: { readonly width: number; readonly height: number },
  diameter: number,
  airflow: number,
  least: number,
): number {
  const cell = 1.15 * diameter;
  const [across, high] = [Math.floor(frame.width / cell), Math.floor(frame.height / cell)];
  const needed = Math.max(least, airflow / (easyVelocity * 0.25 * Math.PI * diameter ** 2));
  const counts = Array.from({ length: across * high }, (_, index) => index + 1).filter((count) =>
    Array.from({ length: high }, (_, index) => index + 1).some((rows) => count % rows === 0 && count / rows <= across),
  );
  return counts.find((count) => count >= needed) ?? counts.at(-1) ?? 1;
}

/** The fan with least power at the hardest condition, steady, within its class, its motor never overloaded. */
export function settleFan(room: Workroom, solved: Solved): boolean {
  let changed = false;
  for (const section of sectionsOfKind(room, "fan")) changed = settle(room, solved, section) || changed;
  return changed;
}

function settle(room: Workroom, solved: Solved, section: DraftSection): boolean {
  const index = indexOf(solved.unit, section.name);
  const hardest = hardestOf(runningRatings(solved), index);
  const key = `${section.name}: selection`;
  if (hardest === undefined) {
    room.obstacles.set(key, "no condition could be solved for the fan");
    return false;
  }
  const running = runningRatings(solved);
  const least = running.reduce((found, each) =>
    enteringFlow(each, index) < enteringFlow(found, index) ? each : found,
  );
  // What does at the hardest condition must also stand the least flow, where a fan is nearest to its peak.
  const candidates = [undefined, cutDiameters]
    .map((diameters) => () => {
      const standing = new Set(candidatesFor(room, solved, section, index, least, diameters).map(nameOf));
      return candidatesFor(room, solved, section, index, hardest, diameters).filter((each) =>
        standing.has(nameOf(each)),
      );
    })
    .reduce<readonly Found[]>((found, look) => (found.length > 0 ? found : look()), []);
  if (candidates.some((each) => isSame(each.candidate, each.motor, section.values, candidates[0]!.candidate))) {
    room.obstacles.delete(key);
    return false;
  }
  const chosen = pick(room, candidates);
  if (chosen === undefined) {
    room.obstacles.set(key, "no wheel of the catalogue that fits the cabinet reaches the pressure steadily");
    return false;
  }
  room.obstacles.delete(key);
  const { candidate, motor } = chosen;
  return choose(room, section, typedValues(candidate, motor), reasons(room, candidate, hardest));
}

/** m, between the standard sizes: wheels of the next size cut smaller, where no standard one stands every flow. */
const cutDiameters = standardFanDiameters.inches
  .slice(0, -1)
  .flatMap((inches, index) =>
    [1 / 3, 2 / 3].map((share) => inches + share * (standardFanDiameters.inches[index + 1]! - inches)),
  )
  .map((inches) => (Math.round(inches * 4) / 4) * metresPerInch);

function enteringFlow(rating: UnitRating, index: number): number {
  return rating.sections[index]!.entering.dryAirFlow;
}

/** What is built, whatever its class and motor's size. */
function nameOf({ candidate, motor }: Found): string {
  return `${candidate.wheel.head.name}, ${candidate.diameter}, ${candidate.count}, ${candidate.drive}, ${motor}`;
}

interface Found {
  readonly candidate: FanCandidate;
  readonly motor: string;
}

function hardestOf(ratings: readonly UnitRating[], index: number): UnitRating | undefined {
  return ratings.reduce<UnitRating | undefined>((found, each) => {
    const rise = (rating: UnitRating) => -rating.sections[index]!.totalPressureLoss;
    return found === undefined || rise(each) > rise(found) ? each : found;
  }, undefined);
}

function candidatesFor(
  room: Workroom,
  { unit }: Solved,
  section: DraftSection,
  index: number,
  hardest: UnitRating,
  diameters: readonly number[] | undefined,
): readonly Found[] {
  const { behaviour } = unit.sections[index]!;
  const known = room.fixed.sections?.[room.draft.sections.indexOf(section)]?.values ?? {};
  const names = known.wheel === undefined ? room.catalogue.names("fan wheel") : [String(known.wheel)];
  const wheels = names.map((name) => room.catalogue.component("fan wheel", name) as FanWheel);
  const redundancy = room.duty.redundancy.airflowWithOneFanOut;
  const free = redundancy > 0 ? [2, 3, 4, 5, 6, 8, 9, 10, 12, 14, 15, 16, 18, 20] : [1, 2, 3, 4];
  const counts = known.count === undefined ? free : [Number(known.count)];
  const lines = known.motor === undefined ? motors : [String(known.motor)];
  const rise = -hardest.sections[index]!.totalPressureLoss + room.duty.externalStatic.reserve;
  return lines.flatMap((motor) => {
    const record = room.catalogue.component("motor", motor) as Motor;
    const values = { ...readValues(room, behaviour, section.values), motor: record } as unknown as FanValues;
    const { candidates } = selectFans({
      frame: unit.frame,
      air: hardest.sections[index]!.entering,
      at: { condition: hardest.condition, operation: hardest.operation },
      rise,
      values,
      wheels: redundancy > 0 ? wheels.filter((wheel) => wheel.arrangement === "plenum wheel") : wheels,
      counts,
      motorReserve: room.limits.motorReserve,
      ...(diameters === undefined ? {} : { diameters }),
      drives: motor === motors[0] ? ["belt", "direct"] : ["direct"],
      pressureToPeak: room.limits.fanPressureToPeak,
    });
    // Plenum wheels sit on their motors' shafts; housed wheels are led by belts, their motors beside them.
    const usual = candidates.filter(
      ({ wheel, drive }) => (wheel.arrangement === "plenum wheel") === (drive === "direct"),
    );
    const { arrayMotorPower, fanEnergyIndex } = room.limits;
    return usual
      .filter(({ count, motorPower }) => count === 1 || motorPower <= arrayMotorPower * (1 + 1e-4))
      .filter(({ energyIndex, motorPower }) =>
        isRegulated(energyIndex, motorPower) ? energyIndex >= fanEnergyIndex : true,
      )
      .map((candidate) => ({ candidate, motor }));
  });
}

/** True where the fan has an index, and a motor from a horsepower up. */
function isRegulated(energyIndex: number, motorPower: number): boolean {
  return energyIndex > 0 && motorPower >= wattsPerHorsepower * (1 - 1e-4);
}

/** Of those within a few percent of the least power, the fewest fans, then the shortest. */
function pick(room: Workroom, found: readonly Found[]): Found | undefined {
  const enough = found.filter(({ candidate }) => leavesEnough(room, candidate.count));
  const least = Math.min(...enough.map(({ candidate }) => candidate.electricPower));
  const near = enough.filter(({ candidate }) => candidate.electricPower <= least * (1 + alike));
  return near.sort((a, b) => a.candidate.count - b.candidate.count || a.candidate.length - b.candidate.length)[0];
}

/** A first look; the array is solved with one fan out afterwards. */
function leavesEnough(room: Workroom, count: number): boolean {
  const wanted = room.duty.redundancy.airflowWithOneFanOut;
  return wanted === 0 || (count - 1) / count >= 0.9 * wanted;
}

function typedValues(candidate: FanCandidate, motor: string): Record<string, DraftValue | undefined> {
  return {
    wheel: candidate.wheel.head.name,
    diameter: `${Number((candidate.diameter / metresPerInch).toFixed(2))} in`,
    class: candidate.class,
    count: candidate.count,
    drive: candidate.drive,
    motor: candidate.drive === "belt" ? undefined : motor,
    "motor power": `${Number((candidate.motorPower / wattsPerHorsepower).toFixed(2))} hp`,
  };
}

/** The fan in the draft is among those that do, and needs hardly more power than the best. */
function isSame(
  candidate: FanCandidate,
  motor: string,
  values: Readonly<Record<string, DraftValue>>,
  best: FanCandidate,
): boolean {
  if (candidate.electricPower > best.electricPower * (1 + 2 * alike)) return false;
  return Object.entries(typedValues(candidate, motor)).every(([name, value]) => String(values[name]) === String(value));
}

function reasons(room: Workroom, candidate: FanCandidate, hardest: UnitRating): string {
  const peak = `${printQuantity(candidate.pressureToPeak, "share", "ip")} of its peak pressure against ${printQuantity(room.limits.fanPressureToPeak, "share", "ip")}`;
  return [
    `${printQuantity(candidate.electricPower, "electricPower", "ip")} from the mains on ${hardest.condition.name}, within 3 % of the least`,
    peak,
    `efficiency ${printQuantity(candidate.totalEfficiency, "share", "ip")} total`,
  ].join("; ");
}
