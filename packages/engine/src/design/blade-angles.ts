import type { Condition } from "#duty/condition";
import { findRoot } from "#numerics/find-root";
import type { MixingBoxDesign } from "#section/mixing-box/design";
import type { MixingBoxRating } from "#section/mixing-box/rate";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { sectionWithRole } from "#unit/walk";

/** Angles (degrees from closed) at which hand-set blades hold the share of outside air that is wanted. */
export interface BladeProposal {
  readonly section: string;
  readonly outsideBladeAngle: number;
  readonly returnBladeAngle: number;
  readonly wantedShare: number;
  /** Share with these angles, and with both rounded to the whole degrees of a quadrant. */
  readonly share: number;
  readonly shareAtWholeDegrees: number;
  /** False when no pair of angles holds the share; `reason` then says why, and the angles come nearest. */
  readonly held: boolean;
  readonly reason: string;
}

/** Share by which a proposal may miss and still holds. */
const heldWithin = 1e-4;
/** degrees: nearer to closed nobody sets a blade by hand; and steps of the search for a bracket. */
const leastAngle = 5;
const angleStep = 5;

/**
 * Proposes blade angles of a mixing box's pair of dampers: the outside blades as wide open as can be, which costs the fan
 * least, and the return blades where the share comes out; where the return path takes too much even wide open, the
 * outside blades are closed as far as it needs. Undefined for a unit without such a pair.
 */
export function proposeBladeAngles(unit: Unit, condition: Condition): BladeProposal | undefined {
  const index = sectionWithRole(unit, "mixing");
  const section = unit.sections[index];
  if (section === undefined || !(section.design as MixingBoxDesign).hasReturn) return undefined;
  const wantedShare = condition.returnAir.outsideAirShare;
  const name = section.name;
  if (wantedShare >= 1) {
    const share = shareAt(unit, condition, 90, 0);
    const reason = "all of the air is to come from outside: the return blades stand closed, and still leak";
    return proposal(unit, condition, name, 90, 0, share, share > 1 - 0.01, reason);
  }
  const driven = rated(bladesSet(unit, "actuated", 90, 90), condition);
  const box = driven.sections[index] as MixingBoxRating;
  if (Math.abs(driven.outsideAirShare - wantedShare) <= heldWithin && driven.operation.returnDamperStop === "none") {
    const share = shareAt(unit, condition, 90, box.returnBladeAngle);
    return proposal(unit, condition, name, 90, box.returnBladeAngle, share, true, "");
  }
  if (driven.operation.returnDamperStop === "closed") {
    const share = shareAt(unit, condition, 90, 0);
    return proposal(unit, condition, name, 90, 0, share, false, "the closed return damper leaks more than is wanted");
  }
  return withReturnOpen(unit, condition, name);
}

/** The return blades wide open, the outside blades closed from open until the share has come down to the one wanted. */
function withReturnOpen(unit: Unit, condition: Condition, section: string): BladeProposal {
  const wantedShare = condition.returnAir.outsideAirShare;
  const excess = (angle: number) => shareAt(unit, condition, angle, 90) - wantedShare;
  let open = 90;
  for (let angle = open - angleStep; angle >= leastAngle; angle -= angleStep) {
    // So far closed that no air at all comes through at this flow: the search ends there.
    if (!rated(bladesSet(unit, "hand set", angle, 90), condition).solved) break;
    if (excess(angle) <= 0) {
      const found = findRoot(excess, angle, open, 1e-7);
      return proposal(unit, condition, section, found, 90, excess(found) + wantedShare, true, "");
    }
    open = angle;
  }
  const reason = "the return opening is too small, or its air stands too far below the box, at any angle";
  return proposal(unit, condition, section, open, 90, excess(open) + wantedShare, false, reason);
}

function proposal(
  unit: Unit,
  condition: Condition,
  section: string,
  outsideBladeAngle: number,
  returnBladeAngle: number,
  share: number,
  isHeld: boolean,
  reason: string,
): BladeProposal {
  const short = fanShortfall(bladesSet(unit, "hand set", outsideBladeAngle, returnBladeAngle), condition);
  return {
    section,
    outsideBladeAngle,
    returnBladeAngle,
    wantedShare: condition.returnAir.outsideAirShare,
    share,
    shareAtWholeDegrees: shareAt(unit, condition, Math.round(outsideBladeAngle), Math.round(returnBladeAngle)),
    held: isHeld && short === undefined,
    reason: isHeld ? (short ?? "") : reason,
  };
}

/** What the fan cannot do with blades set so; undefined when it can. */
function fanShortfall(unit: Unit, condition: Condition): string | undefined {
  const rating = rated(unit, condition);
  const index = sectionWithRole(unit, "fan");
  const fan = unit.sections[index]!;
  const at = { condition, operation: rating.operation };
  const first = fan.behaviour.shortfalls?.(fan.design, rating.sections[index]!, at)[0];
  return first && `with the share held so, ${first.what}`;
}

function shareAt(unit: Unit, condition: Condition, outside: number, back: number): number {
  return rated(bladesSet(unit, "hand set", outside, back), condition).outsideAirShare;
}

function rated(unit: Unit, condition: Condition): UnitRating {
  return rateUnit(unit, condition, createUnitRating(unit, condition));
}

/** The unit with its mixing box's blades set to these angles (degrees from closed). */
export function bladesSet(unit: Unit, control: "hand set" | "actuated", outside: number, back: number): Unit {
  const sections = unit.sections.map((section) => {
    if (section.behaviour.role !== "mixing") return section;
    const design = section.design as MixingBoxDesign;
    const opening = design.returnOpening;
    const set: MixingBoxDesign = {
      ...design,
      control,
      outside: { ...design.outside, bladeAngle: outside },
      returnOpening: opening && { ...opening, part: { ...opening.part, bladeAngle: back } },
    };
    return { ...section, design: set };
  });
  return { ...unit, sections };
}
