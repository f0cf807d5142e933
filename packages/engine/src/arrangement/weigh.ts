import type { Condition } from "#duty/condition";
import type { Duty } from "#duty/duty";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { type Arrangement, arrangeUnit, sectionMasses } from "./arrange.ts";
import { type CasingLeakage, casingLeakage } from "./casing-leakage.ts";
import { cornerLoads, type LugLoad, looseMass, type Piece, piecesOf } from "./lifting.ts";
import { type MassPoint, massOf } from "./mass.ts";
import { type PanelLoad, panelLoads } from "./panel-load.ts";
import { sumOf } from "./part.ts";
import { type RailLoad, railLoad } from "./rail-load.ts";
import { type Running, runUnit, solvedInTurn } from "./running.ts";
import type { FanSprings } from "./spring-load.ts";
import { arrangementTask } from "./task.ts";
import { type Transmission, transmissionOf } from "./transmission.ts";
import type { SectionTrap } from "./trap.ts";

/** Masses of one section, kg. */
export interface SectionMass {
  readonly section: string;
  /** Its own parts, and the panels of the casing around it. */
  readonly parts: number;
  readonly casing: number;
  readonly dry: number;
  readonly carried: number;
  readonly operating: number;
}

/** The unit weighed: masses, loads, and what its structure feels. */
export interface Weighing {
  readonly arrangement: Arrangement;
  readonly running: Running;
  readonly sections: readonly SectionMass[];
  /** kg of base, frame, weather roof and the like, which belong to no section. */
  readonly rest: readonly { readonly name: string; readonly mass: number }[];
  readonly dry: MassPoint;
  readonly operating: MassPoint;
  /** kg of hoods and the like that are shipped loose. */
  readonly loose: number;
  readonly pieces: readonly Piece[];
  readonly corners: readonly LugLoad[];
  readonly rail: RailLoad | undefined;
  readonly traps: readonly SectionTrap[];
  readonly panels: readonly PanelLoad[];
  readonly springs: readonly FanSprings[];
  readonly transmission: Transmission;
  readonly leakage: CasingLeakage;
}

/**
 * The unit of a duty in millimetres, for how it runs at its conditions. That is read from `ratings` of them; the unit is
 * solved for it where they are left out.
 */
export function arrangeRunning(
  unit: Unit,
  duty: Duty,
  conditions: readonly Condition[],
  ratings: Iterable<UnitRating> = solvedInTurn(unit, conditions),
): Arrangement {
  return arrangeUnit(unit, arrangementTask(duty), runUnit(unit, ratings));
}

/** Arranges the unit of a duty as `arrangeRunning` does, and weighs it. */
export function weighUnit(
  unit: Unit,
  duty: Duty,
  conditions: readonly Condition[],
  ratings?: Iterable<UnitRating>,
): Weighing {
  return weighArranged(unit, arrangeRunning(unit, duty, conditions, ratings));
}

/** Weighs a unit that is arranged. */
export function weighArranged(unit: Unit, arrangement: Arrangement): Weighing {
  const { running, traps, springs } = arrangement;
  const operating = massOf(arrangement.whole, "operating");
  const pieces = piecesOf(unit, arrangement);
  return {
    arrangement,
    running,
    sections: massesOfSections(arrangement),
    rest: arrangement.whole.children
      .filter((part) => ["base", "frame", "roof", "fasteners", "lugs"].includes(part.key))
      .map(({ name, children }) => ({
        name,
        mass: sumOf(children, (child) => (child.section === undefined ? child.mass : 0)),
      })),
    dry: massOf(arrangement.whole, "dry"),
    operating,
    loose: looseMass(arrangement),
    pieces,
    corners: cornerLoads(unit, operating),
    rail: railLoad(unit, arrangement, pieces, operating),
    traps,
    panels: panelLoads(unit, running),
    springs,
    transmission: transmissionOf(unit, running),
    leakage: casingLeakage(unit, running),
  };
}

function massesOfSections(arrangement: Arrangement): readonly SectionMass[] {
  const [all, running] = [sectionMasses(arrangement, "dry"), sectionMasses(arrangement, "operating")];
  return arrangement.sections.map(({ section, part }) => {
    const dry = all.get(section.name)!;
    const operating = running.get(section.name)!;
    return {
      section: section.name,
      parts: part.mass,
      casing: dry - part.mass,
      dry,
      carried: operating - dry,
      operating,
    };
  });
}
