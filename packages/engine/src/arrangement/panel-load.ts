import { plateDeflection, sandwichDeflection, sandwichStiffness } from "#component/casing-panel";
import { casingDeflectionClasses, panelDeflectionLimit } from "#standard/casing-class";
import { materials } from "#standard/material";
import type { Unit } from "#unit/unit";
import { type PanelBuild, panelBuild } from "./panel-build.ts";
import type { Running } from "./running.ts";

/** Pa, shear modulus of panel foam; a common figure, from memory. */
const foamShear = 2e6;

/** How a section's wall panels give under pressure. */
export interface PanelLoad {
  readonly section: string;
  /** m, of one panel. */
  readonly shortSide: number;
  readonly longSide: number;
  /** Pa while the fan runs, either sign, and where; at shut-off. */
  readonly pressure: number;
  readonly condition: string;
  readonly shutOff: number;
  /** m. */
  readonly deflection: number;
  readonly shutOffDeflection: number;
  /** Deflection over the short side, running and at shut-off. */
  readonly relative: number;
  readonly shutOffRelative: number;
  /** Class of EN 1886 that the panel meets at 1000 Pa. */
  readonly deflectionClass: string;
  /** True where the formula for small deflections no longer holds: the panel gives less than it says. */
  readonly isLarge: boolean;
}

/** Panels of every section with length: the tallest span of its walls. */
export function panelLoads(unit: Unit, running: Running): readonly PanelLoad[] {
  const build = panelBuild(unit.casing, "wall");
  return unit.sections.flatMap((section, index) => {
    const length = section.layout.length;
    if (length <= 0) return [];
    const wide = length / Math.ceil(length / unit.casing.panelWidth - 1e-9);
    const high = Math.max(unit.frame.height, unit.frame.width);
    const shortSide = Math.min(wide, high);
    const longSide = Math.max(wide, high);
    const { least, leastAt, most, mostAt } = running.sections[index]!.wallPressure;
    const pressure = -least >= most ? least : most;
    const shutOff = Math.sign(pressure) * running.shutOff.pressure;
    const perPascal = deflectionOf(build, 1, shortSide, longSide);
    const deflection = perPascal * Math.abs(pressure);
    const shutOffDeflection = perPascal * Math.abs(shutOff);
    return [
      {
        section: section.name,
        shortSide,
        longSide,
        pressure,
        condition: pressure === least ? leastAt : mostAt,
        shutOff,
        deflection,
        shutOffDeflection,
        relative: deflection / shortSide,
        shutOffRelative: shutOffDeflection / shortSide,
        deflectionClass: classOf((perPascal * 1000) / shortSide),
        isLarge: build.core === "mineral wool" && shutOffDeflection > build.outer.thickness / 2,
      },
    ];
  });
}

/** Largest deflection over span that owners allow. */
export const allowedRelative = panelDeflectionLimit.share;

function classOf(relative: number): string {
  return casingDeflectionClasses.rows.find((row) => relative <= row.relative)?.name ?? casingDeflectionClasses.worst;
}

/** m: foam bonds the skins to one plate; wool leaves each to itself, and they share the pressure. */
function deflectionOf(build: PanelBuild, pressure: number, shortSide: number, longSide: number): number {
  const { outer, inner, coreThickness } = build;
  const stiffness = Math.min(materials[outer.metal].stiffness, materials[inner.metal].stiffness);
  if (build.core === "polyurethane foam") {
    const apart = coreThickness + (outer.thickness + inner.thickness) / 2;
    const bending = sandwichStiffness(outer.thickness, inner.thickness, coreThickness, stiffness);
    return sandwichDeflection(pressure, shortSide, bending, (foamShear * apart ** 2) / coreThickness);
  }
  const together = Math.cbrt(outer.thickness ** 3 + inner.thickness ** 3);
  return plateDeflection("supported", pressure, shortSide, longSide, together, stiffness);
}
