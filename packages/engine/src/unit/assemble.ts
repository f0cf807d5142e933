import type { Frame, SectionKind } from "#section/contract";
import { SectionProblem } from "#section/contract";
import type { Casing } from "./casing.ts";
import type { Unit, UnitSection } from "./unit.ts";

/** A section as it was written: its kind, its name, its values. */
export interface WrittenSection {
  readonly name: string;
  readonly kind: SectionKind;
  readonly values: Readonly<Record<string, unknown>>;
}

/** A section that cannot be built, by its place in the list. */
export interface AssemblyProblem {
  readonly index: number;
  /** Field of the section, or undefined for the section as a whole. */
  readonly field: string | undefined;
  readonly problem: string;
  readonly allowed: string;
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
    const placed = placeSection(section, index, frame, start);
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

function placeSection(
  section: WrittenSection,
  index: number,
  frame: Frame,
  start: number,
): UnitSection | AssemblyProblem {
  const { kind, name, values } = section;
  try {
    const design = kind.prepare(values as never, frame);
    const layout = kind.layout(design, frame);
    return { name, kind: kind.name, behaviour: kind, values, design, layout, start };
  } catch (error) {
    if (!(error instanceof SectionProblem)) throw error;
    return { index, field: error.field, problem: error.message, allowed: error.allowed };
  }
}

/** What no order of sections may break: one fan, at most one mixing box and that before the fan, names told apart. */
function orderProblems(written: readonly WrittenSection[]): readonly AssemblyProblem[] {
  const problems: AssemblyProblem[] = [];
  const withRole = (role: string) => written.flatMap(({ kind }, index) => (kind.role === role ? [index] : []));
  const fans = withRole("fan");
  const boxes = withRole("mixing");
  if (fans.length === 0) {
    problems.push({
      index: written.length - 1,
      field: undefined,
      problem: "the unit has no fan",
      allowed: "one section of kind `fan` (an array of fans is one section with a count)",
    });
  }
  for (const index of fans.slice(1)) {
    problems.push(second(index, "fan", "one fan section; an array of fans is one section with a count"));
  }
  for (const index of boxes.slice(1)) problems.push(second(index, "mixing box", "one mixing box"));
  if (boxes[0] !== undefined && fans[0] !== undefined && boxes[0] > fans[0]) {
    problems.push({
      index: boxes[0],
      field: undefined,
      problem: "the mixing box stands behind the fan, where the return air would have to flow against its pressure",
      allowed: "a mixing box before the fan",
    });
  }
  return [...problems, ...nameProblems(written)];
}

function second(index: number, what: string, allowed: string): AssemblyProblem {
  return { index, field: undefined, problem: `a second ${what}`, allowed };
}

function nameProblems(written: readonly WrittenSection[]): readonly AssemblyProblem[] {
  const seen = new Set<string>();
  const problems: AssemblyProblem[] = [];
  written.forEach(({ name }, index) => {
    if (seen.has(name)) {
      problems.push({
        index,
        field: "name",
        problem: `two sections are called "${name}"`,
        allowed: "a `name` for each that tells them apart",
      });
    }
    seen.add(name);
  });
  return problems;
}
