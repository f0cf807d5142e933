import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { randomMachines } from "#unit/random-machine.test-data";
import { casing, randomSections, unitOrNothing } from "#unit/random-unit.test-data";
import type { Unit } from "#unit/unit";
import { runningAt, sampleTask } from "./arrange.test-data.ts";
import { type Arrangement, arrangeUnit, sectionMasses } from "./arrange.ts";
import { massOf } from "./mass.ts";
import { type Part, visitLeaves, visitParts } from "./part.ts";

/** mm by which rounding may make boxes that touch overlap. */
const touch = 1e-6;

function overlap(one: Part, other: Part): boolean {
  return (["x", "y", "z"] as const).every(
    (axis) =>
      Math.min(one.place[axis] + one.size[axis], other.place[axis] + other.size[axis]) -
        Math.max(one.place[axis], other.place[axis]) >
      touch,
  );
}

/** A wall gives way to what opens in it. */
function isOpening(one: Part, other: Part): boolean {
  return one.kind === "panel" && (other.kind === "door" || other.kind === "collar");
}

/** Leaves of two parts whose boxes overlap: an assembly's own box may reach over a neighbour that stands in its recess. */
function collisions(one: Part, other: Part): string[] {
  if (one.shares || other.shares || !overlap(one, other)) return [];
  if (one.children.length > 0) return one.children.flatMap((child) => collisions(child, other));
  if (other.children.length > 0) return other.children.flatMap((child) => collisions(one, child));
  return isOpening(one, other) || isOpening(other, one) ? [] : [`${one.key} and ${other.key}`];
}

/** Pairs of parts that overlap, wherever in the machine they stand, but for those told to share their space. */
function overlaps({ children }: Part): string[] {
  const own = children.flatMap((one, index) => children.slice(index + 1).flatMap((other) => collisions(one, other)));
  return [...own, ...children.flatMap(overlaps)];
}

/** Pipes that run into one another or into what opens in the walls: they share the space of panels and of nothing else. */
function crossedPipes(whole: Part): string[] {
  const pipes: Part[] = [];
  const others: Part[] = [];
  visitLeaves(whole, (leaf) => {
    if (leaf.kind === "pipe" && leaf.name !== "extended lubrication line") pipes.push(leaf);
    else if (["door", "window", "collar", "box", "trap", "lug"].includes(leaf.kind)) others.push(leaf);
  });
  return pipes.flatMap((pipe, index) =>
    [...pipes.slice(index + 1), ...others]
      .filter((other) => overlap(pipe, other))
      .map((other) => `${pipe.key} and ${other.key}`),
  );
}

/** Under a suction that asks for deep traps, with fans that ask for thrust restraints. */
function arranged(unit: Unit): Arrangement {
  return arrangeUnit(unit, sampleTask, runningAt(unit, -1200, 1500, 0.05));
}

const randomUnits = randomSections
  .map((sections) => unitOrNothing(casing, sections))
  .filter((unit) => unit !== undefined);

describe("arrangement of random machines", () => {
  it("keeps parts apart, whatever stands in the cabinet, in any order, of any size and either hand", () => {
    fc.assert(
      fc.property(randomMachines, (unit) => {
        const { whole } = arranged(unit);
        expect(overlaps(whole)).toEqual([]);
        expect(crossedPipes(whole)).toEqual([]);
      }),
      { numRuns: 120 },
    );
  });
});

describe("arrangement of random units", () => {
  it("keeps every part in the box of its parent", () => {
    fc.assert(
      fc.property(randomUnits, (unit) => {
        const { whole } = arranged(unit);
        visitParts(whole, (part) => {
          for (const child of part.children) {
            for (const axis of ["x", "y", "z"] as const) {
              expect(child.place[axis], child.key).toBeGreaterThanOrEqual(part.place[axis] - touch);
              const end = part.place[axis] + part.size[axis];
              expect(child.place[axis] + child.size[axis], child.key).toBeLessThanOrEqual(end + touch);
            }
          }
        });
      }),
      { numRuns: 40 },
    );
  });

  it("adds up: leaves, sections and pieces weigh what the whole weighs, to 1e-9", () => {
    fc.assert(
      fc.property(randomUnits, (unit) => {
        const arrangement = arranged(unit);
        const { whole } = arrangement;
        let [dry, carried, unassigned] = [0, 0, 0];
        visitLeaves(whole, (leaf) => {
          dry += leaf.mass;
          carried += leaf.carried;
          if (leaf.section === undefined) unassigned += leaf.mass;
          expect(leaf.mass, leaf.key).toBeGreaterThanOrEqual(0);
          expect(Number.isFinite(leaf.mass), leaf.key).toBe(true);
          for (const axis of ["x", "y", "z"] as const) expect(leaf.size[axis], leaf.key).toBeGreaterThanOrEqual(0);
          expect(leaf.massSource, leaf.key).not.toBe("");
        });
        expect(Math.abs(dry / whole.mass - 1)).toBeLessThan(1e-9);
        expect(Math.abs(carried - whole.carried)).toBeLessThan(1e-9 * whole.mass);
        const bySection = [...sectionMasses(arrangement, "dry").values()].reduce((sum, each) => sum + each, 0);
        expect(Math.abs((bySection + unassigned) / whole.mass - 1)).toBeLessThan(1e-9);
        expect(massOf(whole, "operating").mass).toBeGreaterThanOrEqual(whole.mass * (1 - 1e-12));
      }),
      { numRuns: 40 },
    );
  });

  it("gives every part a key of its own", () => {
    fc.assert(
      fc.property(randomUnits, (unit) => {
        const keys: string[] = [];
        visitParts(arranged(unit).whole, (part) => keys.push(part.key));
        expect(new Set(keys).size).toBe(keys.length);
      }),
      { numRuns: 20 },
    );
  });
});
