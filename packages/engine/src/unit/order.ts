import type { SectionKind } from "#section/contract";

/** A section that cannot be built, by its place in the list. */
export interface AssemblyProblem {
  readonly index: number;
  /** Field of the section, or undefined for the section as a whole. */
  readonly field: string | undefined;
  readonly problem: string;
  readonly allowed: string;
}

/** What the order of sections looks at. */
export interface OrderedSection {
  readonly name: string;
  readonly kind: Pick<SectionKind, "name" | "role">;
}

/** Something about an order of sections, in words, at the section that it is about. */
export interface OrderAdvice {
  readonly index: number;
  readonly advice: string;
}

/**
 * What no order of sections may break: one fan, at most one mixing box and that before the fan, the hood outside of the
 * cabinet, nothing behind the way out, names told apart.
 */
export function orderProblems(written: readonly OrderedSection[]): readonly AssemblyProblem[] {
  return [...fanProblems(written), ...mixingProblems(written), ...endProblems(written), ...nameProblems(written)];
}

function fanProblems(written: readonly OrderedSection[]): readonly AssemblyProblem[] {
  const fans = placesOf(written, ({ role }) => role === "fan");
  if (fans.length > 0) {
    const allowed = "one fan section; an array of fans is one section with a count";
    return fans.slice(1).map((index) => at(index, "a second fan", allowed));
  }
  const allowed = "one section of kind `fan` (an array of fans is one section with a count)";
  return [at(written.length - 1, "the unit has no fan", allowed)];
}

function mixingProblems(written: readonly OrderedSection[]): readonly AssemblyProblem[] {
  const [first, ...others] = placesOf(written, ({ role }) => role === "mixing");
  const [fan] = placesOf(written, ({ role }) => role === "fan");
  const problems = others.map((index) => at(index, "a second mixing box", "one mixing box"));
  if (first === undefined || fan === undefined || first < fan) return problems;
  const words = "the mixing box stands behind the fan, where the return air would have to flow against its pressure";
  return [...problems, at(first, words, "a mixing box before the fan")];
}

/** A hood hangs before the cabinet; behind the plenum the air is in the duct. */
function endProblems(written: readonly OrderedSection[]): readonly AssemblyProblem[] {
  const hoods = placesOf(written, ({ name }) => name === "intake hood").filter((index) => index > 0);
  const plenums = placesOf(written, ({ name }) => name === "discharge plenum");
  return [
    ...hoods.map((index) =>
      at(
        index,
        `the hood hangs outside before the intake, and ${written[index - 1]!.name} would stand before it`,
        "an intake hood as the first section",
      ),
    ),
    ...plenums
      .filter((index) => index < written.length - 1)
      .map((index) =>
        at(
          index,
          `the air leaves the cabinet through the discharge plenum, and ${written[index + 1]!.name} would meet none of it`,
          "a discharge plenum as the last section",
        ),
      ),
  ];
}

function nameProblems(written: readonly OrderedSection[]): readonly AssemblyProblem[] {
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

const coils = [
  "chilled-water coil",
  "hot-water coil",
  "steam coil",
  "steam coil with face and bypass",
  "recovery coil",
];
const wetting = ["chilled-water coil", "recovery coil", "intake hood", "louver", "steam humidifier"];

/** What an order costs that can be built: a section that stands where it does not do its work. */
export function orderAdvice(written: readonly OrderedSection[]): readonly OrderAdvice[] {
  const kinds = written.map(({ kind }) => kind.name);
  return written.flatMap(({ name, kind }, index) => {
    const before = kinds.slice(0, index);
    const words = adviceFor(kind, before, kinds.slice(index + 1), name);
    return words === undefined ? [] : [{ index, advice: words }];
  });
}

function adviceFor(
  { name: kind, role }: OrderedSection["kind"],
  before: readonly string[],
  behind: readonly string[],
  name: string,
): string | undefined {
  if (kind === "moisture eliminator" && !before.some((each) => wetting.includes(each))) {
    return `${name} catches the drops of a wet coil, and none stands before it`;
  }
  if (kind === "spray gap" && !coils.includes(behind[0] ?? "")) {
    return `${name} is there to wash a coil's face, and no coil stands right behind it`;
  }
  if (kind === "louver" && before.some((each) => !["intake hood", "louver"].includes(each))) {
    return `${name} keeps rain out at the intake; here the rain has met ${before.at(-1)} already`;
  }
  if (kind === "filter bank") {
    const wet = before.lastIndexOf("chilled-water coil");
    const isWetted = wet >= 0 && !before.includes("moisture eliminator", wet);
    return isWetted
      ? `${name} would get wet: the cooling coil before it throws drops, and no eliminator stops them`
      : undefined;
  }
  if (coils.includes(kind) && !before.includes("filter bank") && behind.includes("filter bank")) {
    return `${name} would clog: the filters stand behind it`;
  }
  const cooling = before.indexOf("chilled-water coil");
  if (role === "heating" && cooling >= 0 && !before.slice(0, cooling).some((each) => coils.includes(each))) {
    return `${name} does not keep frost from the cooling coil, which stands before it`;
  }
  return undefined;
}

function placesOf(
  written: readonly OrderedSection[],
  is: (kind: OrderedSection["kind"]) => boolean,
): readonly number[] {
  return written.flatMap(({ kind }, index) => (is(kind) ? [index] : []));
}

function at(index: number, problem: string, allowed: string): AssemblyProblem {
  return { index, field: undefined, problem, allowed };
}
