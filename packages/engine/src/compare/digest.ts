import { massOf } from "#arrangement/mass";
import type { Proof } from "#mending/smallest-fix";
import type { QuantityKind, UnitSystem } from "#quantity/kind";
import { failsUnit, sortedFindings } from "#rule/finding";
import { findingWords } from "#rule/words";
import type { UnitRating } from "#unit/rating";
import { shortfallsOf } from "#unit/report";

/** A figure by which whole units are held against one another. */
export interface DigestFigure {
  readonly key: string;
  readonly name: string;
  /** `money` in cents. */
  readonly quantity: QuantityKind | "money" | "count";
  /** Undefined where it is not known: no books, no coil. */
  readonly value: number | undefined;
}

/** A unit in a few figures, and what stands against it. */
export interface Digest {
  readonly figures: readonly DigestFigure[];
  /** What fails or is missed, by name. */
  readonly against: readonly string[];
  /** The rule with the least left of its limit among those that decide. */
  readonly tightest: { readonly section: string; readonly rule: string; readonly margin: number } | undefined;
}

/** The digest of a unit that is solved, judged and weighed; words carry their values in units of a system. */
export function digestOf(proof: Proof, system: UnitSystem): Digest {
  const { job, check } = proof;
  const running = check.ratings.filter(({ solved, operation }) => solved && operation.fansRunning);
  const { arrangement } = check.weighing;
  const against = againstUnit(proof, system);
  const figure = (key: string, name: string, quantity: DigestFigure["quantity"], value: number | undefined) => ({
    ...{ key, name, quantity, value },
  });
  return {
    figures: [
      figure("price", "price", "money", proof.price),
      figure("dry", "mass, dry", "mass", proof.mass),
      figure("operating", "mass, operating", "mass", massOf(arrangement.whole, "operating").mass),
      figure("length", "length, hood included", "length", proof.length),
      figure("width", "clear width", "length", job.unit.frame.width),
      figure("height", "clear height", "length", job.unit.frame.height),
      figure("fanPressure", "total pressure of the fan, at most", "pressureDifference", proof.fanPressure),
      figure(
        "fanPower",
        "fan motors from the mains, at most",
        "electricPower",
        most(running, (at) => at.fanElectricPower),
      ),
      figure(
        "cooling",
        "heat taken out, at most",
        "power",
        most(running, (at) => heatOf(at, -1)),
      ),
      figure(
        "heating",
        "heat given, at most",
        "power",
        most(running, (at) => heatOf(at, 1)),
      ),
      figure("failing", "rules and set points missed", "count", against.length),
      figure("advice", "advice", "count", check.findings.filter(({ outcome }) => outcome === "advice").length),
      figure(
        "unknown",
        "cannot be told",
        "count",
        check.findings.filter(({ outcome }) => outcome === "cannot tell").length,
      ),
    ],
    against,
    tightest: tightestOf(proof),
  };
}

/** What fails, and what the conditions of the job itself miss while the fan runs. */
function againstUnit({ job, check }: Proof, system: UnitSystem): readonly string[] {
  const failing = sortedFindings(check.findings)
    .filter(failsUnit)
    .map((finding) => `${finding.entry.section}: ${findingWords(finding, system)}`);
  const unsolved = check.unsolved.map(({ condition, reason }) => `${condition.name}: ${reason}`);
  const own = check.ratings.slice(0, job.conditions.length);
  const missed = own
    .filter(({ solved, operation }) => solved && operation.fansRunning)
    .flatMap((rating) =>
      shortfallsOf(job.unit, rating).map(({ section, what }) => `${section}: ${what} at ${rating.condition.name}`),
    );
  return [...failing, ...unsolved, ...missed];
}

function most(ratings: readonly UnitRating[], of: (rating: UnitRating) => number): number | undefined {
  return ratings.length === 0 ? undefined : Math.max(...ratings.map(of));
}

/** W that coils give the air (way 1) or take out of it (way −1). */
function heatOf({ sections }: UnitRating, way: 1 | -1): number {
  return sections.reduce((sum, section) => sum + Math.max(0, way * section.heatToAir), 0);
}

function tightestOf({ check }: Proof): Digest["tightest"] {
  const deciding = sortedFindings(check.findings).filter(
    ({ entry, outcome }) => entry.decides && entry.waiver === undefined && (outcome === "fail" || outcome === "pass"),
  );
  const [first, ...others] = deciding.filter(({ margin }) => Number.isFinite(margin));
  if (first === undefined) return undefined;
  const found = others.reduce((least, each) => (each.margin < least.margin ? each : least), first);
  return { section: found.entry.section, rule: found.entry.rule.id, margin: found.margin };
}
