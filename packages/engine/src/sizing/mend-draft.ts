import { standardMotorPower } from "#component/motor";
import { wattsPerHorsepower } from "#quantity/inch-pound";
import type { Finding } from "#rule/finding";
import { findingWords } from "#rule/words";
import type { FanDesign } from "#section/fan/design";
import type { FanSectionRating } from "#section/fan/rate";
import type { FilterBankDesign } from "#section/filter-bank/design";
import { doorRoom } from "#section/service-parts";
import { largestAirflow } from "./cabinet.ts";
import type { DraftSection } from "./draft.ts";
import { filters } from "./first-choice.ts";
import { chooseMixingBox } from "./intake.ts";
import { shortenUnit } from "./settle.ts";
import { softerSprings } from "./springs.ts";
import { runningRatings } from "./trial.ts";
import type { Verdict } from "./verdict.ts";
import { choose, chooseCasing, inchesUp, type Solved, sectionsOfKind, type Workroom } from "./workroom.ts";

/** What a step does about a rule that a finished draft misses; gives whether it changed anything. */
type Mender = (at: { readonly room: Workroom; readonly solved: Solved; readonly finding: Finding }) => boolean;

/** How much further than the miss itself a limit is tightened, so that the next draft does not miss by a hair. */
const spare = 0.005;

/** Makes a limit of sizing stricter by what its rule was missed by. */
function tighten(name: "fanPressureToPeak" | "louverOnsetShare" | "hoodVelocity" | "hoodVelocityInSnow"): Mender {
  return ({ room, finding }) => {
    const share = finding.limit / finding.value - spare;
    room.limits[name] *= Math.max(0.8, share);
    return room.limits[name] > 0.75 * finding.limit;
  };
}

/** Filters that take less pressure. */
const easierFilters: Mender = ({ room, finding }) => {
  const next = filters[room.limits.easyFilters + 1];
  if (next === undefined) return false;
  room.limits.easyFilters++;
  const because = `${findingWords(finding, "ip")}: ${next.because}`;
  return sectionsOfKind(room, "filter bank")
    .map((section) => choose(room, section, next.values, because))
    .some(Boolean);
};

/** A motor of the next size: what its rule was missed by, and more. */
const largerMotor: Mender = ({ room, solved, finding }) => {
  const { motorPower } = solved.unit.sections[finding.entry.index]!.design as FanDesign;
  if (standardMotorPower(motorPower * finding.value) === undefined || room.limits.motorReserve > 3) return false;
  // Where the owner limits the motors, the unit must ask less of them.
  if (motorPower * finding.value > room.limits.arrayMotorPower && easierFilters({ room, solved, finding })) return true;
  // Enough that the size there is does no longer do: what is missed with a fan out may be little of what there is to spare.
  const loads = runningRatings(solved)
    .filter(({ condition }) => condition.fansOut === undefined)
    .map((rating) => (rating.sections[finding.entry.index] as FanSectionRating).peakMotorLoad);
  const next = loads.length === 0 ? 0 : (1 + spare) / Math.max(...loads);
  room.limits.motorReserve = Math.max(room.limits.motorReserve * (finding.value + spare), next);
  return true;
};

const shorter: Mender = ({ room, solved, finding }) => shortenUnit(room, solved, finding.value - finding.limit);

/** A tighter casing: leakage is in proportion to its class. */
const tighterCasing: Mender = ({ room, finding }) => {
  const leakageClass = Math.floor(((10 * room.limits.leakageClass * finding.limit) / finding.value) * (1 - spare)) / 10;
  if (!(leakageClass >= 0.5 && leakageClass < room.limits.leakageClass)) return false;
  room.limits.leakageClass = leakageClass;
  return chooseCasing(room, { "leakage class": leakageClass }, findingWords(finding, "ip"));
};

/** m: the least by which a rail is made higher, as its profiles are. */
const railStep = 0.075;

/** A rail that bends less. */
const higherRail: Mender = ({ room, solved, finding }) => {
  const { railHeight } = solved.unit.casing;
  const height = Math.max(railHeight + railStep, (railHeight * finding.value) / finding.limit);
  return chooseCasing(room, { "rail height": inchesUp(height) }, findingWords(finding, "ip"));
};

/** Longer, so that a door fits beside the rack, which stands in the middle. */
const wideEnoughForADoor: Mender = ({ room, solved, finding }) => {
  const section = sectionAt(room, solved, finding);
  const { rackDepth, medium, length } = solved.unit.sections[finding.entry.index]!.design as FilterBankDesign;
  const needed = Math.max(rackDepth, medium.panelDepth) + 2 * doorRoom + 0.01;
  if (section === undefined || needed <= length) return false;
  // It is not shortened again.
  room.chosen.add(section.name);
  return choose(room, section, { length: inchesUp(needed) }, "a door beside the rack");
};

/** An access beside what nobody reaches. */
const accessBeside: Mender = ({ room, solved, finding }) => {
  const section = sectionAt(room, solved, finding);
  if (section === undefined || room.fixed.sections !== undefined) return false;
  const name = `${section.name} access`;
  const access: DraftSection = { kind: "access", name, values: {} };
  room.draft.sections.splice(room.draft.sections.indexOf(section), 0, access);
  const length = inchesUp(room.limits.accessLength);
  return choose(room, access, { length }, findingWords(finding, "ip"));
};

/** Smaller dampers, whose loss holds the box under suction. */
const smallerDampers: Mender = ({ room, solved }) => {
  if (room.limits.damperVelocity > fastestDamper) return false;
  room.limits.damperVelocity *= 1.2;
  chooseMixingBox(room, solved.unit.frame, largestAirflow(room));
  return true;
};

/** m/s on a damper beyond which blades whistle; common practice, no source. */
const fastestDamper = 12;

/** A damper before hand-set blades that shuts outside air off. */
const shutOff: Mender = ({ room, finding }) => {
  const [box] = sectionsOfKind(room, "mixing box");
  if (box === undefined || room.fixed.sections !== undefined) return false;
  return choose(room, box, { control: "actuated" }, findingWords(finding, "ip"));
};

function sectionAt(room: Workroom, { unit }: Solved, { entry }: Finding): DraftSection | undefined {
  const name = unit.sections[entry.index]?.name;
  return room.draft.sections.find((section) => section.name === name);
}

/** By the rule's name. What is not here is left to the smallest single change, or to a larger cabinet. */
const menders: Readonly<Record<string, Mender>> = {
  "intake hood velocity": tighten("hoodVelocity"),
  "hood velocity in snow": tighten("hoodVelocityInSnow"),
  "fan pressure below its peak": tighten("fanPressureToPeak"),
  "motor load": largerMotor,
  "motor never overloads on the curve": largerMotor,
  "casing leakage share": tighterCasing,
  "rail stress": higherRail,
  "unit fits the site, longest": shorter,
  "pressure within the unit": easierFilters,
  "fan power limit": easierFilters,
  "filters reached by a door": wideEnoughForADoor,
  "coil reached from one side": accessBeside,
  "outside air shut off in a winter stop": shutOff,
  "no backflow to the building": smallerDampers,
  "springs do not amplify": softerSprings,
  "springs isolate at design": softerSprings,
  "spring deflection": softerSprings,
};

/**
 * Changes the draft, or its aims, for every missed rule for which a step knows what to do; each step once, since several
 * rules ask for the same.
 */
export function mendDraft(room: Workroom, solved: Solved, { failing, missed }: Verdict): boolean {
  // While there is no fan at all, what its rules say of the one that stands there is no use.
  const hasFan = ![...room.obstacles.keys()].some((key) => key.endsWith(": selection"));
  const taken = new Set<Mender>();
  let changed = false;
  for (const finding of failing) {
    const mender = menders[finding.entry.rule.id];
    if (mender === undefined || taken.has(mender) || (!hasFan && finding.entry.rule.of.includes("fan"))) continue;
    taken.add(mender);
    changed = mender({ room, solved, finding }) || changed;
  }
  return changed || (hasFan && strongerMotors(room, missed));
}

/** With one fan out the others need stronger motors than with all; so does a condition whose air is heavier. */
function strongerMotors({ limits }: Workroom, missed: readonly string[]): boolean {
  const isOneOut = missed.some((words) => words.includes("with a fan out"));
  const isWeak = missed.some((words) => words.includes("motor is too small"));
  if (!(isWeak || (isOneOut && limits.arrayMotorPower >= 11 * wattsPerHorsepower)) || limits.motorReserve > 1.6)
    return false;
  limits.motorReserve *= isWeak ? 1.05 : 1.15;
  return true;
}

/** Power that the miss of a pressure has in the face that is wanted: losses go with the square of velocity and less. */
const faceOfPressure = 0.7;

const faceRules: Readonly<Record<string, number>> = {
  "cooling face velocity": 1,
  "carry-over at the largest flow": 1,
  "carry-over with the fins' coat": 1,
  "eliminator need": 1,
  "filter behind a wet coil": 1,
  "filter panel velocity": 1,
  "angled rack section velocity": 1,
  "heating face velocity": 1,
  "louver margin to its onset": 1,
  "louver below its onset of penetration": 1,
  "louver face velocity": 1,
  "louver pressure loss": 0.5,
  "pressure within the unit": faceOfPressure,
  "fan power limit": faceOfPressure,
};

/** What no step mends within a cross-section, whatever else is chosen; and by how much it may still hang on something else. */
const ofTheCabinet: Readonly<Record<string, number>> = {
  "cooling face velocity": 1.02,
  "heating face velocity": 1.02,
  "filter panel velocity": 1.02,
  "pressure within the unit": 1.5,
  "widest piece": 1,
  "unit fits the site, widest": 1,
  "highest piece": 1,
  "unit fits the site, highest": 1,
};

/** True where the cross-section is hopeless, so that nothing else need be mended for it; the next one is told why. */
export function isHopeless(room: Workroom, solved: Solved, verdict: Verdict): boolean {
  const isTooSmall = verdict.failing.some(
    ({ entry, value, limit }) => value > limit * (ofTheCabinet[entry.rule.id] ?? Number.POSITIVE_INFINITY),
  );
  const lacksCapacity = [...room.obstacles.keys()].some((key) => key.endsWith(": capacity"));
  if (!isTooSmall && !lacksCapacity) return false;
  return mendCabinet(room, solved, verdict) || lacksCapacity;
}

/** Asks of the next cabinet what this one lacked: a larger face, or less width or height. Gives whether it lacked any. */
export function mendCabinet({ limits }: Workroom, { unit }: Solved, { failing }: Verdict): boolean {
  const { width, height } = unit.frame;
  let found = false;
  for (const { entry, value, limit } of failing) {
    const power = faceRules[entry.rule.id];
    const over = value - limit;
    if (power !== undefined) {
      const factor = Math.min(1.6, Math.max(1.01, (value / limit) ** power));
      limits.leastArea = Math.max(limits.leastArea, width * height * factor);
    } else if (entry.rule.id === "widest piece" || entry.rule.id === "unit fits the site, widest") {
      limits.mostWidth = Math.min(limits.mostWidth, width - over);
    } else if (entry.rule.id === "highest piece" || entry.rule.id === "unit fits the site, highest") {
      limits.mostHeight = Math.min(limits.mostHeight, height - over);
    } else continue;
    found = true;
  }
  return found;
}
