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

/** Puts a unit together: prepares every section for the cabinet and places it along the airflow. */
export function assembleUnit(casing: Casing, written: readonly WrittenSection[]): Assembly {
  const frame: Frame = { width: casing.width, height: casing.height, hand: casing.connectionHand };
  const problems: AssemblyProblem[] = [...orderProblems(written)];
  const sections: UnitSection[] = [];
  let start = 0;
  written.forEach((section, index) => {
    const wall = index < written.length - 1 ? casing.panelThickness : 0;
    const placed = placeSection(section, index, frame, start, wall);
    if ("problem" in placed) {
      problems.push(placed);
      return;
    }
    sections.push(placed);
    start += placed.layout.length;
  });
  if (problems.length > 0) return { unit: undefined, problems };
  return { unit: { frame, casing, sections, length: start }, problems: [] };
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
