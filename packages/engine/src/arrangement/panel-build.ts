import { sheetMass, sheetThickness } from "#component/sheet-metal";
import { blank, type SectionPart, type SheetCut } from "#section/part";
import { materials, type SheetMetal } from "#standard/material";
import type { SheetGaugeName } from "#standard/sheet-gauge";
import type { Casing } from "#unit/casing";

/** A double wall: two skins and what is between. Lengths m, masses kg/m². */
export interface PanelBuild {
  readonly thickness: number;
  readonly outer: Skin;
  readonly inner: Skin;
  readonly core: Casing["panelCore"];
  readonly coreThickness: number;
  readonly coreMass: number;
  /** kg/m²: both skins and the core, without folded edges. */
  readonly mass: number;
}

/** One skin. */
export interface Skin {
  readonly metal: SheetMetal;
  readonly gauge: SheetGaugeName;
  readonly thickness: number;
  readonly mass: number;
}

/** Share of a perforated sheet that is holes; common practice. */
const perforated = 0.23;

/** The panels of walls and ceiling, or of the floor. */
export function panelBuild(casing: Casing, of: "wall" | "floor"): PanelBuild {
  const outer = skin(casing.outerMetal, of === "wall" ? casing.outerGauge : "20");
  const solid = skin(casing.innerMetal, of === "wall" ? casing.innerGauge : casing.floorGauge);
  const isPerforated = of === "wall" && casing.innerSkin === "perforated";
  const inner = isPerforated ? { ...solid, mass: solid.mass * (1 - perforated) } : solid;
  // Sound goes into fibre, not into closed foam.
  const core = isPerforated ? "mineral wool" : casing.panelCore;
  const coreThickness = Math.max(0, casing.panelThickness - outer.thickness - inner.thickness);
  const coreMass = coreThickness * materials[core].density;
  return {
    thickness: casing.panelThickness,
    outer,
    inner,
    core,
    coreThickness,
    coreMass,
    mass: outer.mass + inner.mass + coreMass,
  };
}

function skin(metal: SheetMetal, gauge: SheetGaugeName): Skin {
  return { metal, gauge, thickness: sheetThickness(metal, gauge), mass: sheetMass(metal, gauge) };
}

/**
 * kg of a panel of `long` by `wide` m, less openings of `open` m²: skins, core, and skins folded over all edges to the middle
 * of the panel.
 */
export function panelMass(build: PanelBuild, long: number, wide: number, open: number): number {
  const edges = 2 * (long + wide) * (build.thickness / 2) * (build.outer.mass + build.inner.mass);
  return Math.max(0, long * wide - open) * build.mass + edges;
}

/** What fills a panel of `long` by `wide` m. */
export function panelFilling(build: PanelBuild, long: number, wide: number): NonNullable<SectionPart["filling"]> {
  return { material: build.core, volume: long * wide * build.coreThickness };
}

/** What is cut for both skins of a panel, edges included. */
export function panelSheets(build: PanelBuild, long: number, wide: number): readonly SheetCut[] {
  const blanks = [blank(long + build.thickness, wide + build.thickness)];
  return [build.outer, build.inner].map(({ metal, gauge }) => ({ metal, gauge, blanks }));
}
