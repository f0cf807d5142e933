import { inBothUnits } from "#section/both-units";
import type { Casing } from "#unit/casing";
import type { Unit, UnitSection } from "#unit/unit";
import { baseParts, type Lug, lugParts } from "./base-parts.ts";
import { casingPanels } from "./casing-panels.ts";
import { doorNotices } from "./door-notice.ts";
import { type DoorSwing, doorSwings } from "./door-swing.ts";
import { fastenerParts } from "./fastener-parts.ts";
import { fittedParts } from "./fitted-parts.ts";
import { frameParts } from "./frame-parts.ts";
import { type MassState, massIn } from "./mass.ts";
import type { ArrangementNotice, CorrosionClass } from "./notice.ts";
import { clearPans } from "./pan-reach.ts";
import { panelBuild } from "./panel-build.ts";
import { type Part, type Point, partGroup } from "./part.ts";
import { partMaterialNotices } from "./part-notice.ts";
import { hasRoof, type Placement, roofParts, roofRise } from "./roof-parts.ts";
import type { Running } from "./running.ts";
import { type PlacedSection, placeSection } from "./section-place.ts";
import { serviceNotices } from "./service-notice.ts";
import { type ServiceSpace, serviceSpaces } from "./service-space.ts";
import { type SightLine, sightLines } from "./sight-line.ts";
import { lugPlaces, type ShippingLimits, type Split, splitUnit } from "./split.ts";
import { type FanSprings, springsOf } from "./spring-load.ts";
import { type SectionTrap, trapsOf } from "./trap.ts";
import { type WetZone, wetZonesOf } from "./wet-zone.ts";

/** What an arrangement depends on besides the unit. */
export interface ArrangementTask {
  readonly placement: Placement;
  readonly limits: ShippingLimits;
  readonly corrosionClass: CorrosionClass;
  /** V between phases. */
  readonly voltage: number;
}

/** The unit in millimetres. */
export interface Arrangement {
  /**
   * The whole machine; its children are base, casing, frame, weather roof, the sections by their names, fasteners, lifting
   * lugs, and what is fitted as the running unit asks: traps, thrust restraints.
   */
  readonly whole: Part;
  readonly casing: Casing;
  /** What the machine was arranged for. */
  readonly running: Running;
  readonly traps: readonly SectionTrap[];
  readonly springs: readonly FanSprings[];
  readonly sections: readonly PlacedSection[];
  /** The sections by themselves, before pans give way to what follows them. */
  readonly placed: ReadonlyMap<UnitSection, PlacedSection>;
  readonly splits: readonly Split[];
  readonly lugs: readonly Lug[];
  /** mm: outside of it, rail, roof and hood included, lugs left out. */
  readonly size: Point;
  /** mm across and up of each piece. */
  readonly outside: { readonly width: number; readonly height: number };
  /** Where water stands or runs, mm along the airflow. */
  readonly wetZones: readonly WetZone[];
  /** How doors open, what room service asks for outside, and what is seen through windows. */
  readonly swings: readonly DoorSwing[];
  readonly spaces: readonly ServiceSpace[];
  readonly sights: readonly SightLine[];
  readonly notices: readonly ArrangementNotice[];
}

/**
 * Arranges the unit: every part with its place, size, mass and material, and where it comes apart. What only the running
 * unit tells, how deep traps stand and whether springs give way to the fans' thrust, is read from `running`. Sections that
 * stand as in the arrangement `before` are taken from there.
 */
export function arrangeUnit(
  unit: Unit,
  task: ArrangementTask,
  running: Running,
  before?: Pick<Arrangement, "casing" | "placed">,
): Arrangement {
  const wall = panelBuild(unit.casing, "wall");
  const known = before?.casing === unit.casing ? before.placed : undefined;
  const alone = unit.sections.map((section) => known?.get(section) ?? placeSection(unit, section, wall));
  const { sections, notices: ofPans } = clearPans(alone);
  const wetZones = wetZonesOf(sections);
  const casing = casingPanels(unit, sections, wetZones);
  const outside = outsideSize(unit, task.placement);
  const { splits, notices } = splitUnit(unit, sections, casing, task.limits, outside);
  const lugs = splits.flatMap((split) => lugPlaces(unit, split));
  const joints = splits.slice(1).map((split) => split.from);
  const roof = roofParts(unit, task.placement);
  const built = [baseParts(unit), casing, frameParts(unit, joints), roof, ...sections.map(({ part }) => part)].filter(
    (part) => part !== undefined,
  );
  // Pipe stubs, disconnects and traps stand out of the walls a little; what a site and a truck measure is walls and roof.
  const size = { ...partGroup("unit", "unit", undefined, built).size, y: outside.width };
  const traps = trapsOf(unit, sections, running);
  const springs = springsOf(unit, sections, running);
  const hooks = lugParts(unit, lugs);
  const screws = fastenerParts(unit, sections, [casing, roof], joints, wetZones);
  const fitted = fittedParts(unit, sections, hooks, traps, springs);
  const hung = [screws, hooks, fitted].filter((part) => part !== undefined);
  const whole = partGroup("unit", "unit", undefined, [...built, ...hung]);
  const swings = doorSwings(unit, sections);
  const service = { swings, spaces: serviceSpaces(unit, sections, swings, task.voltage), sights: sightLines(sections) };
  return {
    whole,
    casing: unit.casing,
    placed: new Map(alone.map((each) => [each.section, each])),
    running,
    traps,
    springs,
    sections,
    splits,
    lugs,
    size,
    outside,
    wetZones,
    ...service,
    notices: [
      ...notices,
      ...ofPans,
      ...siteNotices(size, task.limits),
      ...serviceNotices(sections, service, task.limits, outside.width),
      ...partMaterialNotices(whole, task.corrosionClass, unit.casing.finish !== "mill"),
      ...doorNotices(unit, swings, running),
    ],
  };
}

/** mm across and up, of a piece: walls, rail, roof. */
function outsideSize(unit: Unit, placement: Placement): { readonly width: number; readonly height: number } {
  const { panelThickness, railHeight, roofOverhang } = unit.casing;
  const roof = hasRoof(unit, placement);
  return {
    width: 1000 * (unit.frame.width + 2 * panelThickness + (roof ? 2 * roofOverhang : 0)),
    height: 1000 * (unit.frame.height + 2 * panelThickness + railHeight) + (roof ? roofRise(unit) : 0),
  };
}

function siteNotices(size: Point, limits: ShippingLimits): readonly ArrangementNotice[] {
  const checks = [
    { name: "longer", size: size.x, limit: limits.length },
    { name: "wider", size: size.y, limit: limits.width },
    { name: "higher", size: size.z, limit: limits.height },
  ];
  return checks.flatMap(({ name, size: long, limit }) => {
    if (limit === undefined || long <= 1000 * limit + 0.5) return [];
    const what = `the unit is ${name} than the site takes: ${inBothUnits(long / 1000, "length")}, at most ${inBothUnits(limit, "length")}`;
    return [{ part: "unit", at: undefined, what, weight: "caution" as const }];
  });
}

/** kg of every section by its name: its own parts, the panels of the casing around it, and what is fitted to it. */
export function sectionMasses({ whole, sections }: Arrangement, state: MassState): ReadonlyMap<string, number> {
  const masses = new Map(sections.map(({ section, part }) => [section.name, massIn(part, state)]));
  for (const group of whole.children) {
    if (group.section !== undefined) continue;
    for (const part of group.children) {
      if (part.section !== undefined) masses.set(part.section, (masses.get(part.section) ?? 0) + massIn(part, state));
    }
  }
  return masses;
}
