import { type MaterialName, materials } from "#standard/material";
import type { ArrangementNotice, CorrosionClass } from "./notice.ts";
import { type Part, visitLeaves } from "./part.ts";

/** Air in which bare zinc does not last under water: the classes of ISO 12944 from C4 up; in others it is common. */
const harsh = new Set<CorrosionClass>(["C4", "C5"]);

function isOutside({ key, kind, name }: Part): boolean {
  return kind === "roof" || key.startsWith("roof/") || name.startsWith("hood");
}

/** Parts on which water stands or runs and which are of a metal that it attacks, by section and material. */
export function partMaterialNotices(
  whole: Part,
  corrosionClass: CorrosionClass,
  isCoated: boolean,
): readonly ArrangementNotice[] {
  const isHarsh = harsh.has(corrosionClass);
  const found = new Map<string, { section: string; material: MaterialName; names: Set<string>; at: number }>();
  visitLeaves(whole, (leaf) => {
    if (!leaf.wet || leaf.material === undefined || !materials[leaf.material].rusts) return;
    if (leaf.material === "galvanized steel" && !isHarsh) return;
    // The finish of the outside covers roof and hood.
    if (isCoated && isOutside(leaf)) return;
    const section = leaf.section ?? "unit";
    const key = `${section} ${leaf.material}`;
    const entry = found.get(key) ?? { section, material: leaf.material, names: new Set(), at: leaf.place.x };
    entry.names.add(leaf.name);
    found.set(key, entry);
  });
  return [...found.values()].map(({ section, material, names, at }) => ({
    part: section,
    at,
    what: `${[...names].join(", ")}: ${material} where water stands or runs; stainless steel or a coat lasts longer`,
    weight: "caution" as const,
    source: "common-practice",
  }));
}
