import { dryTransmittance, faceTemperature, panelTransmittance } from "#component/casing-panel";
import { dewPointFromHumidityRatio } from "#fluid/dew-point";
import { casingFilms, casingFrames } from "#standard/casing-frame";
import { materials } from "#standard/material";
import type { Unit } from "#unit/unit";
import { panelBuild } from "./panel-build.ts";
import type { Running, WallTemperatures } from "./running.ts";

/** The face of a casing against the dew point of the air that touches it. */
export interface FaceAgainstDew {
  readonly section: string;
  readonly condition: string;
  readonly side: "outside" | "inside";
  /** °C: of the face at its coldest, over the frame; dew point of the air there; what is left. */
  readonly face: number;
  readonly dewPoint: number;
  readonly margin: number;
  /** W/m²K: largest local transmittance at which the face would stay dry. */
  readonly allowed: number;
}

/** Heat through the casing. */
export interface Transmission {
  /** W/m²K: panel by itself, with its edges, and at its worst place. */
  readonly panel: number;
  readonly whole: number;
  readonly local: number;
  /** W/K of the whole casing. */
  readonly conductance: number;
  /** W into the air at the condition that brings most; W out of it. */
  readonly gain: number;
  readonly gainAt: string;
  readonly loss: number;
  readonly lossAt: string;
  /** Where sweating is nearest, outside and inside. */
  readonly faces: readonly FaceAgainstDew[];
}

/** Heat through panels and edges at every condition, and faces against dew points. */
export function transmissionOf(unit: Unit, running: Running): Transmission {
  const build = panelBuild(unit.casing, "wall");
  const frame = casingFrames[unit.casing.frame];
  const conductivity = materials[build.core].conductivity;
  const { insideResistance, outsideResistance } = casingFilms;
  const panel = panelTransmittance(
    Math.max(build.coreThickness, 0.001),
    conductivity,
    insideResistance,
    outsideResistance,
  );
  const conductances = unit.sections.map((section) => sectionConductance(unit, section.layout.length, panel));
  const area = 2 * (unit.frame.width + unit.frame.height) * unit.length;
  const conductance = conductances.reduce((sum, each) => sum + each, 0);
  const flows = new Map<string, number>();
  for (const { section, condition, inside, outside } of running.walls) {
    const heat = conductances[section]! * (outside.dryBulb - inside.dryBulb);
    flows.set(condition, (flows.get(condition) ?? 0) + heat);
  }
  let [gain, gainAt, loss, lossAt] = [0, "", 0, ""];
  for (const [condition, heat] of flows) {
    if (heat > gain) [gain, gainAt] = [heat, condition];
    if (-heat > loss) [loss, lossAt] = [-heat, condition];
  }
  const local = Math.max(frame.localTransmittance, panel);
  return {
    panel,
    whole: area > 0 ? conductance / area : panel,
    local,
    conductance,
    gain,
    gainAt,
    loss,
    lossAt,
    faces: nearestFaces(unit, running, local),
  };
}

/** W/K of a section's walls: area, four edges along, and an edge around each panel's joint. */
function sectionConductance(unit: Unit, length: number, panel: number): number {
  if (length <= 0) return 0;
  const { width, height } = unit.frame;
  const around = 2 * (width + height);
  const psi = casingFrames[unit.casing.frame].linearTransmittance;
  // Joints between panels are folded sheet without a profile: half an edge each.
  const joints = Math.ceil(length / unit.casing.panelWidth - 1e-9);
  return panel * around * length + psi * (4 * length + 0.5 * joints * around);
}

/** The section and condition where each side's face comes nearest to its dew point, or falls farthest below. */
function nearestFaces(unit: Unit, running: Running, local: number): readonly FaceAgainstDew[] {
  const found = new Map<string, FaceAgainstDew>();
  for (const wall of running.walls) {
    if ((unit.sections[wall.section]?.layout.length ?? 0) <= 0) continue;
    for (const side of ["outside", "inside"] as const) {
      const face = faceOf(unit, wall, side, local);
      const before = found.get(side);
      if (before === undefined || face.margin < before.margin) found.set(side, face);
    }
  }
  return [...found.values()];
}

function faceOf(unit: Unit, wall: WallTemperatures, side: "outside" | "inside", local: number): FaceAgainstDew {
  const [near, far] = side === "outside" ? [wall.outside, wall.inside] : [wall.inside, wall.outside];
  const film = side === "outside" ? casingFilms.outsideFilm : casingFilms.insideFilm;
  const face = faceTemperature(near.dryBulb, far.dryBulb, Math.min(local, film), film);
  const dewPoint = dewPointFromHumidityRatio(near.humidityRatio, wall.barometricPressure, "enhanced");
  return {
    section: unit.sections[wall.section]!.name,
    condition: wall.condition,
    side,
    face,
    dewPoint,
    margin: face - dewPoint,
    allowed: dryTransmittance(near.dryBulb, far.dryBulb, dewPoint, film),
  };
}
