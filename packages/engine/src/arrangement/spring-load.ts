import { springLoads, springNaturalFrequency, springStiffness, springTransmissibility } from "#component/spring";
import type { FanDesign } from "#section/fan/design";
import type { Unit } from "#unit/unit";
import { sectionWithRole } from "#unit/walk";
import { massOf } from "./mass.ts";
import type { Part } from "./part.ts";
import type { Running } from "./running.ts";
import type { PlacedSection } from "./section-place.ts";

/** Pa of fan pressure above which a thrust restraint is usual: 4 in of water. */
const thrustPressure = 996;

/** Springs of one fan. */
export interface FanSprings {
  readonly fan: string;
  /** kg that they carry. */
  readonly mass: number;
  /** m: static deflection, the same at every spring. */
  readonly deflection: number;
  /** Hz. */
  readonly naturalFrequency: number;
  readonly points: readonly SpringPoint[];
  /** Force passed on over force made, at the lowest and the highest speed of the job. */
  readonly atLowest: number;
  readonly atHighest: number;
  /** rev/s. */
  readonly lowestSpeed: number;
  readonly highestSpeed: number;
  /** N that the air pushes the fan backwards, m that the springs give way to it; whether a restraint is usual. */
  readonly thrust: number;
  readonly thrustTravel: number;
  readonly needsRestraint: boolean;
}

/** A spring in plan, mm, its load in kg and its stiffness in N/m. */
export interface SpringPoint {
  readonly x: number;
  readonly y: number;
  readonly mass: number;
  readonly stiffness: number;
}

/** Loads of the springs under every fan; none when the fans stand rigid. */
export function springsOf(unit: Unit, sections: readonly PlacedSection[], running: Running): readonly FanSprings[] {
  const index = sectionWithRole(unit, "fan");
  const design = unit.sections[index]!.design as FanDesign;
  if (design.isolation !== "springs") return [];
  const { part } = sections[index]!;
  return part.children.flatMap((fan) => {
    const sprung = fan.children.find((child) => child.key.endsWith("/sprung"));
    const springs = fan.children.filter((child) => child.kind === "spring");
    return sprung === undefined || springs.length < 3 ? [] : [fanSprings(design, fan, sprung, springs, running)];
  });
}

function fanSprings(
  design: FanDesign,
  fan: Part,
  sprung: Part,
  springs: readonly Part[],
  running: Running,
): FanSprings {
  const { mass, centre } = massOf(sprung, "operating");
  const places = springs.map(({ place, size }) => ({ x: place.x + size.x / 2, y: place.y + size.y / 2 }));
  const loads = springLoads(mass, centre, places);
  const { deflection, damping, horizontalStiffness } = design.springs;
  const naturalFrequency = springNaturalFrequency(deflection);
  const at = (speed: number) => springTransmissibility(speed / naturalFrequency, damping);
  const area = design.housed ? design.outletArea : design.inletArea;
  const thrust = running.fanRise.most * area;
  const stiffness = loads.map((load) => springStiffness(Math.max(0, load), deflection));
  const sideways = horizontalStiffness * stiffness.reduce((sum, each) => sum + each, 0);
  return {
    fan: fan.name,
    mass,
    deflection,
    naturalFrequency,
    points: places.map((place, point) => ({ ...place, mass: loads[point]!, stiffness: stiffness[point]! })),
    atLowest: at(running.fanSpeed.least),
    atHighest: at(running.fanSpeed.most),
    lowestSpeed: running.fanSpeed.least,
    highestSpeed: running.fanSpeed.most,
    thrust,
    thrustTravel: sideways > 0 ? thrust / sideways : 0,
    needsRestraint: running.fanRise.most > thrustPressure,
  };
}
