import type { SectionTrap } from "#arrangement/trap";
import type { Weighing } from "#arrangement/weigh";
import { proposeBladeAngles } from "#design/blade-angles";
import { metresPerInch as inch } from "#quantity/inch-pound";
import { printQuantity } from "#quantity/print";
import { inBothUnits } from "#section/both-units";
import type { ChilledWaterCoilRating } from "#section/chilled-water-coil/rate";
import type { DraftValue } from "./draft.ts";
import { indexOf, runningRatings } from "./trial.ts";
import { choose, chooseCasing, inchesUp, type Solved, sectionsOfKind, type Workroom } from "./workroom.ts";

/** Blade angles at which hand-set dampers hold the wanted share at every running condition, in whole degrees. */
export function settleBlades(room: Workroom, solved: Solved): boolean {
  const [section] = sectionsOfKind(room, "mixing box");
  const running = runningRatings(solved);
  const design = running.find((rating) => rating.condition.filterLoading === 0.5);
  const outside = section?.values["outside air"];
  const back = section?.values["return air"];
  if (section === undefined || design === undefined || typeof outside !== "object" || typeof back !== "object")
    return false;
  if (section.values.control !== "hand set") return false;
  const wanted = room.duty.outsideAirShare;
  const least = Math.min(...running.map((rating) => rating.outsideAirShare));
  const most = Math.max(...running.map((rating) => rating.outsideAirShare));
  const isSet = "blade angle" in outside && "blade angle" in back;
  if (isSet && least >= wanted - 0.002 && most < wanted + 0.06) return false;
  // What the design condition must have, so that the leanest of the conditions still has what is wanted.
  const aim = Math.min(0.995, wanted + (isSet ? Math.max(0, design.outsideAirShare - least) : 0.005));
  const condition = { ...design.condition, returnAir: { ...design.condition.returnAir, outsideAirShare: aim } };
  const proposal = proposeBladeAngles(solved.unit, condition);
  if (proposal === undefined) return false;
  const key = `${section.name}: share`;
  // What the fan of the moment cannot do is no matter of the dampers: it is chosen after them.
  const holds = proposal.held || Math.abs(proposal.shareAtWholeDegrees - aim) < 0.01;
  if (holds) room.obstacles.delete(key);
  else
    room.obstacles.set(
      key,
      `the dampers do not hold ${printQuantity(wanted, "share", "ip")} of outside air: ${proposal.reason}`,
    );
  const angle = (group: object, degrees: number): DraftValue => ({ ...group, "blade angle": `${degrees} deg` });
  return choose(
    room,
    section,
    {
      "outside air": angle(outside, Math.ceil(proposal.outsideBladeAngle - 0.2)),
      "return air": angle(back, Math.floor(proposal.returnBladeAngle)),
    },
    `hand-set angles that hold ${printQuantity(wanted, "share", "ip")} of outside air at every running condition`,
  );
}

/** A moisture eliminator behind a coil that may throw water. */
export function settleEliminator(room: Workroom, solved: Solved): boolean {
  if (room.fixed.sections !== undefined) return false;
  const coil = sectionsOfKind(room, "chilled-water coil")[0];
  if (coil === undefined || sectionsOfKind(room, "moisture eliminator").length > 0) return false;
  const index = indexOf(solved.unit, coil.name);
  const shares = runningRatings(solved, "cooling").map(
    (rating) => (rating.sections[index] as ChilledWaterCoilRating).carryOverShare,
  );
  const worst = Math.max(0, ...shares);
  if (worst <= 0.98) return false;
  const place = room.draft.sections.indexOf(coil) + 1;
  const section = { kind: "moisture eliminator", name: "moisture eliminator", values: {} };
  room.draft.sections.splice(place, 0, section);
  const because = `the coil's fastest face velocity is ${printQuantity(worst, "share", "ip")} of the one that throws water`;
  choose(room, section, { eliminator: "typical two-bend 6 in" }, because);
  return true;
}

/** Lengths that give way where the site is short, the least missed first; common practice. */
const givingWay = [
  { kind: "discharge plenum", length: 24, because: "the duct's straight run begins in the duct" },
  { kind: "access", length: 24, because: "as narrow as a person enters" },
  { kind: "mixing box", length: 36, because: "mixing suffers: see its coldest filament" },
  { kind: "filter bank", length: 40, because: "panels come out sideways, one row at a time" },
] as const;

/** Shortens what may be shortened, as far as it is needed where the unit is `excess` (m) longer than the site takes. */
export function shortenUnit(room: Workroom, { unit }: Solved, excess: number): boolean {
  const over = inBothUnits(excess, "length");
  let left = excess;
  let changed = false;
  for (const { kind, length, because } of givingWay) {
    const long = unit.sections.filter(
      (section) => section.kind === kind && section.layout.length > (length + 0.5) * inch,
    );
    for (const { name, layout } of long) {
      const section = sectionsOfKind(room, kind).find((each) => each.name === name);
      const words = `the site is ${over} short; ${because}`;
      if (section === undefined || room.chosen.has(name)) continue;
      if (!choose(room, section, { length: `${length} in` }, words)) continue;
      changed = true;
      left -= layout.length - length * inch;
    }
    if (left <= 0) return changed;
  }
  return shortenFan(room, over) || changed;
}

/** The access before a fan is its clear space as well. */
function shortenFan(room: Workroom, over: string): boolean {
  const [fan] = sectionsOfKind(room, "fan");
  const before = fan && room.draft.sections[room.draft.sections.indexOf(fan) - 1];
  if (fan === undefined || before?.kind !== "access") return false;
  const because = `the site is ${over} short; the access before the fan is clear space as well`;
  return choose(room, fan, { "upstream space": "6 in" }, because);
}

/** A rail high enough for the deepest trap of the unit that was weighed. */
export function settleRail(room: Workroom, { traps }: Weighing): boolean {
  const deepest = traps.reduce<SectionTrap | undefined>(
    (found, each) => (found === undefined || each.railNeeded > found.railNeeded ? each : found),
    undefined,
  );
  if (deepest === undefined) return chooseCasing(room, { "rail height": "6 in" }, "no trap asks for more");
  // It never sinks again: what one round needs, the next by a hair less, would go to and fro.
  const before = Number.parseFloat(String(room.draft.casing["rail height"] ?? "0")) * inch;
  const needed = Math.max(deepest.railNeeded, 6 * inch);
  if (before >= needed - 1e-9) return false;
  const words = `the trap of ${deepest.section} stands ${printQuantity(deepest.depth, "length", "ip")} deep at ${printQuantity(Math.abs(deepest.pressure), "pressureDifference", "ip")}`;
  return chooseCasing(room, { "rail height": inchesUp(needed) }, words);
}
