import { condensateTrap, halfFullDrain, railForTrap, sealLossSuction } from "#component/condensate-trap";
import type { Unit } from "#unit/unit";
import type { Running } from "./running.ts";
import type { PlacedSection } from "./section-place.ts";

/** Drain pipes of plain sizes: bore and outside diameter, m; schedule 40, from memory. */
const drainPipes = [
  { name: "1 in", bore: 0.0266, outside: 0.0334 },
  { name: "1-1/4 in", bore: 0.0351, outside: 0.0422 },
  { name: "1-1/2 in", bore: 0.0409, outside: 0.0483 },
  { name: "2 in", bore: 0.0525, outside: 0.0603 },
  { name: "3 in", bore: 0.0779, outside: 0.0889 },
] as const;

/** m/m of the line. */
const lineFall = 0.01;
/** m of fall of pan and line to the trap; m of room under it. */
export const fallToTrap = 0.01;
const roomUnder = 0.025;

/** The trap of one section's pans. */
export interface SectionTrap {
  readonly section: string;
  /** Pa that the trap is made for: the deepest suction, or the highest pressure, while the fan runs; and where. */
  readonly pressure: number;
  readonly condition: string;
  /** m. */
  readonly drop: number;
  readonly seal: number;
  readonly depth: number;
  readonly pipe: string;
  /** m, outside diameter. */
  readonly pipeOutside: number;
  /** m³/s of water at the wettest condition, and what the pipe takes half full. */
  readonly flow: number;
  readonly capacity: number;
  /** m of rail that it needs under the floor, and what the unit has. */
  readonly railNeeded: number;
  readonly rail: number;
  readonly fits: boolean;
  /** Pa of suction at which the seal is drawn out; and whether the fan at shut-off gets there. */
  readonly sealLoss: number;
  readonly losesSealAtShutOff: boolean;
}

/** Traps of every section with a pan that is drained. */
export function trapsOf(unit: Unit, placed: readonly PlacedSection[], running: Running): readonly SectionTrap[] {
  return placed.flatMap(({ part, section }, index) => {
    const hasPan = part.children.some((child) => child.kind === "pan" && child.name !== "down-comer");
    if (!hasPan) return [];
    const found = running.sections[index]!;
    const { least, leastAt, most, mostAt } = found.staticPressure;
    const isSuction = -least >= most;
    const pressure = isSuction ? least : most;
    const flow = found.drained.most / 1000;
    const pipe =
      drainPipes.find((each) => halfFullDrain(each.bore, lineFall) >= flow) ?? drainPipes[drainPipes.length - 1]!;
    const trap = condensateTrap(pressure, pipe.outside);
    const railNeeded = railForTrap(trap.depth, fallToTrap, roomUnder);
    const sealLoss = sealLossSuction(trap.seal);
    return [
      {
        section: section.name,
        pressure,
        condition: isSuction ? leastAt : mostAt,
        ...trap,
        pipe: pipe.name,
        pipeOutside: pipe.outside,
        flow,
        capacity: halfFullDrain(pipe.bore, lineFall),
        railNeeded,
        rail: unit.casing.railHeight,
        fits: unit.casing.railHeight >= railNeeded - 1e-9,
        sealLoss,
        losesSealAtShutOff: isSuction && running.shutOff.pressure > sealLoss,
      },
    ];
  });
}
