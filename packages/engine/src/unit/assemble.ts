import { sameValues } from "#form/same-values";
import type { Frame, SectionKind } from "#section/contract";
import { SectionProblem } from "#section/contract";
import type { Casing } from "./casing.ts";
import { type AssemblyProblem, orderProblems } from "./order.ts";
import type { Unit, UnitSection } from "./unit.ts";

/** A section as it was written: its kind, its name, its values. */
export interface WrittenSection {
  readonly name: string;
  readonly kind: SectionKind;
  readonly values: Readonly<Record<string, unknown>>;
}

/** The unit, or every reason why it cannot be put together. */
export type Assembly =
  | { readonly unit: Unit; readonly problems: readonly [] }
  | { readonly unit: undefined; readonly problems: readonly AssemblyProblem[] };

/**
 * Puts a unit together: prepares every section for the cabinet and places it along the airflow. What is the same as in the
 * unit `before` is taken from there, the very objects, so that whoever keeps what follows from a section need not ask anew.
 */
export function assembleUnit(casing: Casing, written: readonly WrittenSection[], before?: Unit): Assembly {
  const known = before !== undefined && sameValues(before.casing, casing) ? before : undefined;
  const frame: Frame = known?.frame ?? { width: casing.width, height: casing.height, hand: casing.connectionHand };
  const problems: AssemblyProblem[] = [...orderProblems(written)];
  const sections: UnitSection[] = [];
  let start = 0;
  written.forEach((section, index) => {
    const wall = index < written.length - 1 ? casing.panelThickness : 0;
    const same = knownSection(known, section, index, written.length);
    const placed = same === undefined ? placeSection(section, index, frame, start, wall) : movedTo(same, start);
    if ("problem" in placed) {
      problems.push(placed);
      return;
    }
    sections.push(placed);
    start += placed.layout.length;
  });
  if (problems.length > 0) return { unit: undefined, problems };
  return { unit: { frame, casing: known?.casing ?? casing, sections, length: start }, problems: [] };
}

/** `wall` is the m that a wall behind the section takes, where it asks for one. */
function placeSection(
  section: WrittenSection,
  index: number,
  frame: Frame,
  start: number,
  wall: number,
): UnitSection | AssemblyProblem {
  const { kind, name, values } = section;
  try {
    const design = kind.prepare(values as never, frame);
    const own = kind.layout(design, frame);
    const layout = own.wallBehind === true ? { ...own, length: own.length + wall } : own;
    return { name, kind: kind.name, behaviour: kind, values, design, layout, start };
  } catch (error) {
    if (!(error instanceof SectionProblem)) throw error;
    return { index, field: error.field, problem: error.message, allowed: error.allowed };
  }
}

function movedTo(section: UnitSection, start: number): UnitSection {
  return section.start === start ? section : { ...section, start };
}

/**
 * The section as the unit before has it, where it says the same; most stand where they stood. One that came to the end, or
 * stands there no longer, has another wall behind it.
 */
function knownSection(
  before: Unit | undefined,
  { name, kind, values }: WrittenSection,
  index: number,
  count: number,
): UnitSection | undefined {
  if (before === undefined) return undefined;
  const { sections } = before;
  const found = sections[index]?.name === name ? sections[index] : sections.find((each) => each.name === name);
  const isSame = found?.behaviour === kind && sameValues(found.values, values);
  return isSame && (found === sections.at(-1)) === (index === count - 1) ? found : undefined;
}
