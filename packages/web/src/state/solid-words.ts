import type { Solid } from "@oncethrough/engine/drawing/solids";
import type { Unit } from "@oncethrough/engine/unit/unit";

/** A section of the machine in words, for those who do not see it. */
export interface SectionWords {
  readonly section: string;
  /** m from the entry of the cabinet, and its length. */
  readonly start: number;
  readonly length: number;
  /** What stands in it, largest first, with how many of each. */
  readonly parts: readonly { readonly name: string; readonly count: number }[];
}

/** The machine section by section: where each stands, and what is in it. */
export function solidWords(unit: Unit, solids: readonly Solid[]): readonly SectionWords[] {
  return unit.sections.map(({ name, start, layout }) => {
    const parts = new Map<string, { keys: Set<string>; size: number }>();
    for (const solid of solids) {
      if (solid.section !== name || solid.layer !== "insides") continue;
      const known = parts.get(solid.name) ?? { keys: new Set(), size: 0 };
      known.keys.add(solid.part);
      known.size = Math.max(known.size, volumeOf(solid));
      parts.set(solid.name, known);
    }
    const named = [...parts].sort(([, one], [, other]) => other.size - one.size);
    return {
      section: name,
      start,
      length: layout.length,
      parts: named.map(([part, { keys }]) => ({ name: part, count: keys.size })),
    };
  });
}

/** mm³ of the box around a solid. */
function volumeOf(solid: Solid): number {
  if (solid.shape === "box") return solid.size.x * solid.size.y * solid.size.z;
  if (solid.shape === "cylinder") return 4 * solid.radius * solid.radius * solid.length;
  const across = solid.outline.filter((_, index) => index % 2 === 0);
  const up = solid.outline.filter((_, index) => index % 2 === 1);
  const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  return span(across) * span(up) * (solid.to - solid.from);
}
