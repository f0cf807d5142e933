import type { Arrangement } from "#arrangement/arrange";
import type { Part } from "#arrangement/part";
import { line } from "#chart/items";
import type { DisplayItem } from "#section/display";
import { farthestFirst, paperBox, partReference, silhouettes, type View } from "./projection.ts";

const planView: View = { side: "plan", width: 0 };

/** Kinds that other drawing shows, or that hang over everything. */
const left = new Set<Part["kind"]>(["door", "window", "collar", "light", "lug", "trap"]);
/** Kinds through which what is under them stays seen. */
const open = new Set<Part["kind"]>(["frame", "blades", "screen", "sheet", "guard", "drive", "filter", "fins"]);

/** What stands inside, seen from above, the lowest first; what lies over it covers it. */
export function planInsides({ sections, whole }: Arrangement): readonly DisplayItem[] {
  const parts = sections.map(({ part }) => part);
  const fitted = whole.children.filter(({ key }) => key === "fitted").flatMap(({ children }) => children);
  const drawn = new Set<string>();
  const leaves = farthestFirst(planView, parts).filter(({ kind, form, shares, key, name }) => {
    if (left.has(kind) || name === "weather roof") return false;
    // Linkage and gaskets lie in their damper's or rack's own box.
    return !(shares && form === undefined && /\/(linkage|fasteners|inner tubes|supports|control|tracks)$/.test(key));
  });
  const items = leaves.flatMap((leaf) => [
    ...silhouettes(planView, leaf, {
      ...(open.has(leaf.kind) ? {} : { fill: "paper" as const }),
      // Only the elevation shows how blades stand: here they are detail.
      ...(leaf.kind === "blades" ? { ink: "fine" as const } : {}),
    }),
    ...detail(leaf),
  ]);
  const traps = fitted
    .filter(({ kind }) => kind === "trap")
    .flatMap((trap) => silhouettes(planView, trap, { fill: "paper" }));
  return [...items, ...traps].filter((item) => isNew(item, drawn));
}

/** The same outline twice, stacked coils over one another, is drawn once. */
function isNew(item: DisplayItem, drawn: Set<string>): boolean {
  if (item.shape !== "line") return true;
  const key = `${item.ink} ${item.points.map((value) => Math.round(value)).join(" ")}`;
  if (drawn.has(key)) return false;
  drawn.add(key);
  return true;
}

/** What makes a part known from above: rows of a coil, blades of a wheel, pleats of filters. */
function detail(leaf: Part): readonly DisplayItem[] {
  const [from, low, to, high] = paperBox(planView, leaf);
  const reference = partReference(leaf);
  if (leaf.kind === "fins") {
    const lines = 3;
    return Array.from({ length: lines }, (_, index) => {
      const x = from + ((to - from) * (index + 1)) / (lines + 1);
      return line(`${leaf.key}/row ${index + 1}`, "hairline", [x, low, x, high], { reference });
    });
  }
  if (leaf.kind === "wheel" && leaf.form?.shape === "cylinder") {
    const count = 14;
    return Array.from({ length: count - 1 }, (_, index) => {
      // Blades round a drum, seen from the side, crowd towards its edges.
      const share = 0.5 - 0.5 * Math.cos((Math.PI * (index + 1)) / count);
      const isAcross = leaf.form?.shape === "cylinder" && leaf.form.axis === "y";
      const points = isAcross
        ? [from + share * (to - from), low, from + share * (to - from), high]
        : [from, low + share * (high - low), to, low + share * (high - low)];
      return line(`${leaf.key}/blade ${index + 1}`, "fine", points, { reference });
    });
  }
  if (leaf.kind === "filter") {
    const count = Math.max(2, Math.round((high - low) / 75));
    const points = Array.from({ length: count + 1 }, (_, index) => [
      from + (index % 2 === 0 ? 0.1 : 0.9) * (to - from),
      low + ((high - low) * index) / count,
    ]).flat();
    return [line(`${leaf.key}/pleats`, "hairline", points, { reference })];
  }
  return [];
}
