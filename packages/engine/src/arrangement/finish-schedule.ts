import type { Unit } from "#unit/unit";
import type { Arrangement } from "./arrange.ts";
import { panelBuild } from "./panel-build.ts";
import { type Part, visitLeaves } from "./part.ts";

/** A face of the unit, what it is made of, and its coat. */
export interface FinishLine {
  readonly face: string;
  readonly metal: string;
  readonly gauge: string;
  readonly coat: string;
  /** m². */
  readonly area: number;
}

/** Screws or bolts alike. */
export interface FastenerCount {
  readonly what: string;
  readonly count: number;
}

/** Metal, gauge, coat and area of every face: walls outside and inside, ceiling, floor, ends, roof, hoods, base rail. */
export function finishSchedule(unit: Unit, { whole }: Arrangement): readonly FinishLine[] {
  const { finish } = unit.casing;
  const wall = panelBuild(unit.casing, "wall");
  const floor = panelBuild(unit.casing, "floor");
  const lines = new Map<string, FinishLine>();
  const add = (face: string, metal: string, gauge: string, coat: string, area: number) => {
    const before = lines.get(face);
    lines.set(face, { face, metal, gauge, coat, area: area + (before?.area ?? 0) });
  };
  visitLeaves(whole, (leaf) => {
    if (leaf.kind === "panel") {
      const build = leaf.name === "floor panel" ? floor : wall;
      const area = faceArea(leaf);
      const face = leaf.name === "bulkhead" ? leaf.name : leaf.name.replace(" panel", "");
      const isWithin = leaf.name === "bulkhead";
      const underside = leaf.name === "floor panel" ? "mill" : finish;
      add(
        `${face}, ${isWithin ? "before" : "outside"}`,
        build.outer.metal,
        build.outer.gauge,
        isWithin ? "mill" : underside,
        area,
      );
      add(`${face}, ${isWithin ? "behind" : "inside"}`, build.inner.metal, build.inner.gauge, "mill", area);
      return;
    }
    for (const { metal, gauge, blanks } of leaf.kind === "roof" || leaf.name.startsWith("hood ") ? leaf.sheets : []) {
      const area = blanks.reduce((sum, each) => sum + each.count * each.length * each.width, 0) / 1e6;
      add(leaf.section === undefined ? "weather roof" : "hood", metal, gauge, finish, area);
    }
    if (leaf.kind === "rail" && leaf.key.startsWith("base/")) {
      const around = 2 * leaf.size.z + 2 * Math.min(leaf.size.x, leaf.size.y);
      add(
        "base rail",
        "steel",
        "channel",
        "primer and finish coat",
        (Math.max(leaf.size.x, leaf.size.y) * around) / 1e6,
      );
    }
  });
  return [...lines.values()];
}

/** m² of a panel's two longer sides. */
function faceArea({ size }: Part): number {
  const [long = 0, wide = 0] = [size.x, size.y, size.z].sort((a, b) => b - a);
  return (long * wide) / 1e6;
}

/** Screws and bolts of the whole unit by what they are ordered by. */
export function fastenersOf({ whole }: Arrangement): readonly FastenerCount[] {
  const counts = new Map<string, number>();
  for (const { kind, bought, count } of whole.children.flatMap(({ children }) => children)) {
    if (kind === "fastener" && bought !== undefined) counts.set(bought, count + (counts.get(bought) ?? 0));
  }
  return [...counts].map(([what, count]) => ({ what, count }));
}
