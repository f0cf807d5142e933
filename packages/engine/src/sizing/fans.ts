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

/** Share by which what the fan has to add may move before a better one is looked for. */
const sameRise = 0.08;

/** The fan with least power at the hardest condition, steady, within its class, its motor never overloaded. */
export function settleFan(room: Workroom, solved: Solved): boolean {
  let changed = false;
  for (const section of sectionsOfKind(room, "fan")) changed = settle(room, solved, section) || changed;
  return changed;
}

function settle(room: Workroom, solved: Solved, section: DraftSection): boolean {
  const index = indexOf(solved.unit, section.name);
  const running = runningRatings(solved);
  const hardest = hardestOf(running, index);
  const key = `${section.name}: selection`;
  if (hardest === undefined) {
    room.obstacles.set(key, "no condition could be solved for the fan");
    return false;
  }
  const least = running.reduce((found, each) =>
    enteringFlow(each, index) < enteringFlow(found, index) ? each : found,
  );
  const places = { solved, section, index, hardest, least };
  // A fan that was chosen and does stays, with what class and motor it needs now: its task changes by a hair from round to round.
  const before = room.fanRises.get(section.name);
  const isAlike = before !== undefined && Math.abs(riseOf(hardest, index) / before - 1) < sameRise;
  const [standing] = isAlike ? standingFans(room, places, presentLook(room, places)) : [];
  const chosen =
    standing ??
    pick(
      room,
      firstOf(looks(room, places), (look) => standingFans(room, places, look)),
    );
  if (chosen === undefined) {
    room.obstacles.set(key, "no wheel of the catalogue that fits the cabinet reaches the pressure steadily");
    return false;
  }
  room.obstacles.delete(key);
  if (standing === undefined) room.fanRises.set(section.name, riseOf(hardest, index));
  const { candidate, motor } = chosen;
  return choose(room, section, typedValues(candidate, motor), reasons(room, candidate, hardest));
}

/** Where a fan stands, and the conditions that decide about it. */
interface FanPlace {
  readonly solved: Solved;
  readonly section: DraftSection;
  readonly index: number;
  readonly hardest: UnitRating;
  readonly least: UnitRating;
}

/** What is looked at. */
interface Look {
  readonly wheels: readonly FanWheel[];
  readonly counts: readonly number[];
  readonly motors: readonly string[];
  /** m; the standard sizes where left out. */
  readonly diameters?: readonly number[];
}

function firstOf<Item, Result>(items: readonly Item[], look: (item: Item) => readonly Result[]): readonly Result[] {
  for (const item of items) {
    const found = look(item);
    if (found.length > 0) return found;
  }
  return [];
}

/** The fans that do at the hardest condition and stand the least flow, where a fan is nearest to its peak. */
function standingFans(room: Workroom, place: FanPlace, look: Look): readonly Found[] {
  const found = candidatesFor(room, place, place.hardest, look);
  if (found.length === 0) return [];
  const each = <Value>(of: (each: Found) => Value) => [...new Set(found.map(of))];
  const again: Look = {
    wheels: each(({ candidate }) => candidate.wheel),
    diameters: each(({ candidate }) => candidate.diameter),
    counts: each(({ candidate }) => candidate.count),
    motors: each(({ motor }) => motor),
  };
  const standing = new Set(candidatesFor(room, place, place.least, again).map(nameOf));
  return found.filter((candidate) => standing.has(nameOf(candidate)));
}

/** Every fan that may be: of the standard sizes first; then of those between. */
function looks(room: Workroom, { section }: FanPlace): readonly Look[] {
  const known = room.fixed.sections?.[room.draft.sections.indexOf(section)]?.values ?? {};
  const names = known.wheel === undefined ? room.catalogue.names("fan wheel") : [String(known.wheel)];
  const redundancy = room.duty.redundancy.airflowWithOneFanOut;
  const free = redundancy > 0 ? [2, 3, 4, 5, 6, 8, 9, 10, 12, 14, 15, 16, 18, 20] : [1, 2, 3, 4];
  const all: Look = {
    wheels: names
      .map((name) => room.catalogue.component("fan wheel", name) as FanWheel)
      .filter(({ arrangement }) => redundancy === 0 || arrangement === "plenum wheel"),
    counts: known.count === undefined ? free : [Number(known.count)],
    motors: known.motor === undefined ? motors : [String(known.motor)],
  };
  return [all, { ...all, diameters: cutDiameters }];
}

/** The fan of the draft alone. */
function presentLook(room: Workroom, { solved, section, index }: FanPlace): Look {
  const values = readValues(room, solved.unit.sections[index]!.behaviour, section.values) as unknown as FanValues;
  const { wheel, count, diameter, motor } = values;
  return { wheels: [wheel], counts: [count], diameters: [diameter], motors: [motor.head.name] };
}

function riseOf(rating: UnitRating, index: number): number {
  return -rating.sections[index]!.totalPressureLoss;
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
  return ratings.reduce<UnitRating | undefined>(
    (found, each) => (found === undefined || riseOf(each, index) > riseOf(found, index) ? each : found),
    undefined,
  );
}

/** Plenum wheels sit on their motors' shafts; housed wheels are led by belts, their motors of the usual speed beside them. */
const builds = [
  { drive: "belt", of: (wheel: FanWheel) => wheel.arrangement !== "plenum wheel", motors: motors.slice(0, 1) },
  { drive: "direct", of: (wheel: FanWheel) => wheel.arrangement === "plenum wheel", motors },
] as const;

function candidatesFor(
  room: Workroom,
  { solved: { unit }, section, index }: FanPlace,
  at: UnitRating,
  look: Look,
): readonly Found[] {
  const { behaviour } = unit.sections[index]!;
  const values = readValues(room, behaviour, section.values) as unknown as FanValues;
  const rise = riseOf(at, index) + room.duty.externalStatic.reserve;
  const found = builds.flatMap((build) => {
    const wheels = look.wheels.filter(build.of);
    const lines = look.motors.filter((motor) => !motors.includes(motor) || build.motors.includes(motor));
    if (wheels.length === 0) return [];
    return lines.flatMap((motor) => {
      const { candidates } = selectFans({
        frame: unit.frame,
        air: at.sections[index]!.entering,
        at: { condition: at.condition, operation: at.operation },
        rise,
        values: { ...values, motor: room.catalogue.component("motor", motor) as Motor },
        wheels,
        counts: look.counts,
        motorReserve: room.limits.motorReserve,
        ...(look.diameters === undefined ? {} : { diameters: look.diameters }),
        drives: [build.drive],
        pressureToPeak: room.limits.fanPressureToPeak,
      });
      return candidates.map((candidate) => ({ candidate, motor }));
    });
  });
  return found.filter(({ candidate }) => isAllowed(room, candidate));
}

/** Motors of an array as small as the owner wants them, the index as high. */
function isAllowed({ limits }: Workroom, { count, motorPower, energyIndex }: FanCandidate): boolean {
  if (count > 1 && motorPower > limits.arrayMotorPower * (1 + 1e-4)) return false;
  return !isRegulated(energyIndex, motorPower) || energyIndex >= limits.fanEnergyIndex;
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

function reasons(room: Workroom, candidate: FanCandidate, hardest: UnitRating): string {
  const peak = `${printQuantity(candidate.pressureToPeak, "share", "ip")} of its peak pressure against ${printQuantity(room.limits.fanPressureToPeak, "share", "ip")}`;
  return [
    `${printQuantity(candidate.electricPower, "electricPower", "ip")} from the mains on ${hardest.condition.name}, within 3 % of the least`,
    peak,
    `efficiency ${printQuantity(candidate.totalEfficiency, "share", "ip")} total`,
  ].join("; ");
}
