import { inBothUnits } from "#section/both-units";
import type { ArrangementNotice } from "./notice.ts";
import { type Part, partGroup, visitLeaves } from "./part.ts";
import type { PlacedSection } from "./section-place.ts";

/** Sections whose pans stand clear of what follows, and what is to be said of pans that had to be shortened for it. */
interface ClearPans {
  readonly sections: readonly PlacedSection[];
  readonly notices: readonly ArrangementNotice[];
}

/**
 * Pans that reach under what follows end where something stands on the floor there. Another pan takes over what falls; short
 * of anything else the pan is shorter than was asked, and that is said.
 */
export function clearPans(placed: readonly PlacedSection[]): ClearPans {
  const notices: ArrangementNotice[] = [];
  const end = placed.length === 0 ? 0 : 1000 * endOf(placed[placed.length - 1]!);
  const sections = placed.map((each, index) => {
    const { part, section } = each;
    const reaching = part.children.filter((pan) => isPan(pan) && pan.place.x + pan.size.x > 1000 * endOf(each) + 1);
    if (reaching.length === 0) return each;
    const after = leavesOf(placed.slice(index + 1));
    const children = part.children.map((child) => {
      if (!reaching.includes(child)) return child;
      const first = firstInTheWay(child, after);
      const stop = first?.place.x ?? end;
      if (child.place.x + child.size.x <= stop) return child;
      if (first?.kind !== "pan") notices.push(shortNotice(section.name, child, stop, wordsFor(first)));
      return shortened(child, stop - child.place.x);
    });
    return { ...each, part: partGroup(part.key, part.name, part.section, children) };
  });
  return { sections, notices };
}

function endOf({ section }: PlacedSection): number {
  return section.start + section.layout.length;
}

function isPan({ kind, children }: Part): boolean {
  return kind === "pan" && children.length === 0;
}

function leavesOf(placed: readonly PlacedSection[]): readonly Part[] {
  const leaves: Part[] = [];
  for (const { part } of placed) visitLeaves(part, (leaf) => leaves.push(leaf));
  return leaves.filter(({ shares }) => !shares);
}

/** The first part that stands at the height of a pan, within its reach; a pan before what stands over its edge. */
function firstInTheWay(pan: Part, after: readonly Part[]): Part | undefined {
  const end = pan.place.x + pan.size.x;
  let first: Part | undefined;
  for (const leaf of after) {
    const { place, size } = leaf;
    const isThere =
      place.x > pan.place.x + 1 &&
      place.x < end &&
      place.y < pan.place.y + pan.size.y &&
      place.y + size.y > pan.place.y &&
      place.z < pan.place.z + pan.size.z &&
      place.z + size.z > pan.place.z;
    if (isThere && (first === undefined || place.x < first.place.x)) first = leaf;
  }
  return first;
}

function wordsFor(first: Part | undefined): string {
  return first === undefined ? "the end of the cabinet" : `the ${first.name} of ${first.section ?? "the unit"}`;
}

function shortNotice(section: string, pan: Part, stop: number, atWhat: string): ArrangementNotice {
  const short = inBothUnits((pan.place.x + pan.size.x - stop) / 1000, "length");
  const what = `its ${pan.name} ends ${short} short of its reach, at ${atWhat}: more room behind it, or a pan there`;
  return { part: section, at: stop, what, weight: "caution", source: "common-practice" };
}

/** A pan of another length: its sheet and what fills it in proportion. */
function shortened(pan: Part, length: number): Part {
  const share = length / pan.size.x;
  const less = pan.size.x - length;
  return {
    ...pan,
    size: { ...pan.size, x: length },
    mass: pan.mass * share,
    carried: pan.carried * share,
    sheets: pan.sheets.map((cut) => ({
      ...cut,
      blanks: cut.blanks.map((blank) =>
        Math.abs(blank.length - pan.size.x) < Math.abs(blank.width - pan.size.x)
          ? { ...blank, length: Math.max(1, blank.length - less) }
          : { ...blank, width: Math.max(1, blank.width - less) },
      ),
    })),
    filling: pan.filling === undefined ? undefined : { ...pan.filling, volume: pan.filling.volume * share },
  };
}
