import type { FanSystemCurve } from "@oncethrough/engine/chart/fan-system";
import type { PicturedYear } from "@oncethrough/engine/chart/year-carpets";
import type { Digest } from "@oncethrough/engine/compare/digest";
import type { InputChange } from "@oncethrough/engine/compare/input-changes";
import type { CoilChoice } from "@oncethrough/engine/design/coil-alternative";
import type { FanCandidate } from "@oncethrough/engine/design/fan-selection";
import type { SectionCoilChoice } from "@oncethrough/engine/design/section-alternatives";
import type { Fix } from "@oncethrough/engine/mending/smallest-fix";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import type { Contradiction } from "@oncethrough/engine/sizing/contradiction";
import type { Choice } from "@oncethrough/engine/sizing/workroom";
import type { ShopFiles } from "@oncethrough/engine/takeoff/read-shop";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import type { RepresentativeYear } from "@oncethrough/engine/year/representative";
import type { SegmentResult } from "@oncethrough/engine/year/segment";
import type { Spread, Trial, Uncertainty } from "@oncethrough/engine/year/uncertainty";
import type { YearReport } from "@oncethrough/engine/year/year-report";
import type { FiltersFound } from "#state/filter-choices";
import type { Judgement } from "#state/finding-lines";
import type { ToldConditions } from "#state/told-conditions";

/** Long work that the page hands to its worker. A task is plain data: all that its result follows from. */
export type Task =
  | AlternativesTask
  | SystemCurvesTask
  | SizingTask
  | ConditionsTask
  | FindingsTask
  | FixTask
  | ComparisonTask
  | YearTask
  | YearPieceTask
  | YearWholeTask
  | UncertaintyTask
  | TrialTask
  | UncertaintyWholeTask;

/** Other ways to build a section. */
export interface AlternativesTask {
  readonly kind: "coil alternatives" | "rated coil alternatives" | "fan alternatives" | "filter alternatives";
  /** The job. */
  readonly text: string;
  /** Place of the section in the airflow. */
  readonly index: number;
  /** Key of the condition at which they are judged; undefined: the one that asks most of the section. */
  readonly condition: string | undefined;
  /** Limits as typed, a text of their own. */
  readonly limits: string;
}

/** What the unit asks of its fan at three filter loadings. */
export interface SystemCurvesTask {
  readonly kind: "system curves";
  readonly text: string;
  readonly condition: string;
}

/** A unit for a duty, by the owner's profile that the duty names. */
export interface SizingTask {
  readonly kind: "sizing";
  /** The duty file. */
  readonly text: string;
}

/** The unit solved at all its conditions. */
export interface ConditionsTask {
  readonly kind: "conditions";
  readonly text: string;
}

/** The unit judged by the rules of the profile that the job names. */
export interface FindingsTask {
  readonly kind: "findings";
  readonly text: string;
}

/** The smallest fix of one finding. */
export interface FixTask {
  readonly kind: "smallest fix";
  readonly text: string;
  /** Name of the section, or `unit`. */
  readonly section: string;
  readonly rule: string;
}

/** Job texts side by side. */
export interface ComparisonTask {
  readonly kind: "comparison";
  readonly texts: readonly string[];
  /** Of the words about what fails. */
  readonly system: UnitSystem;
}

/** Every hour of a year. */
export interface YearTask {
  readonly kind: "year";
  /** The job. */
  readonly text: string;
  /** Name under which the weather was lent to the worker; undefined: made up from the design days. */
  readonly weather: string | undefined;
}

/** A run of hours of a year: a piece of the work that one of several workers does. */
export interface YearPieceTask extends Omit<YearTask, "kind"> {
  readonly kind: "year piece";
  readonly segment: number;
}

/** A year put together from all its pieces. */
export interface YearWholeTask extends Omit<YearTask, "kind"> {
  readonly kind: "year whole";
  readonly pieces: readonly SegmentResult[];
}

/** Trials of a year within the tolerances of what is built and supplied. */
export interface UncertaintyTask extends Omit<YearTask, "kind"> {
  readonly kind: "uncertainty";
  readonly trials: number;
  readonly seed: number;
}

/** One of the trials; seed and number say what is drawn. */
export interface TrialTask extends Omit<UncertaintyTask, "kind"> {
  readonly kind: "trial";
  readonly trial: number;
}

/** The trials put together. */
export interface UncertaintyWholeTask extends Omit<UncertaintyTask, "kind"> {
  readonly kind: "uncertainty whole";
  readonly pieces: readonly Trial[];
}

/** What the trials say, as the page shows it. */
export interface UncertaintyResult extends Omit<Uncertainty, "rules"> {
  readonly rules: readonly {
    readonly rule: string;
    readonly section: string;
    readonly missed: number;
    readonly spread: Spread;
  }[];
}

/** A solved year as the page shows it. */
export interface YearResult {
  /** Where the weather was taken. */
  readonly place: string;
  readonly report: Omit<YearReport, "findings">;
  /** Rules that decide and are missed in some hour. */
  readonly rules: readonly {
    readonly rule: string;
    readonly section: string;
    readonly margin: number;
    readonly at: number;
    readonly missed: number;
  }[];
  readonly year: PicturedYear;
  /** The few hours that stand for it, and what they tell against all. */
  readonly representative: RepresentativeYear;
}

/** What each kind of task comes to; copied from the worker to the page, so plain data too. */
export interface Results {
  readonly "coil alternatives": CoilAlternatives;
  readonly "rated coil alternatives": RatedCoilAlternatives;
  readonly "fan alternatives": FanAlternatives;
  readonly "filter alternatives": FilterAlternatives;
  readonly "system curves": readonly FanSystemCurve[];
  readonly sizing: SizingResult;
  readonly year: YearResult;
  readonly "year piece": SegmentResult;
  readonly "year whole": YearResult;
  readonly uncertainty: UncertaintyResult;
  readonly trial: Trial;
  readonly "uncertainty whole": UncertaintyResult;
  readonly conditions: ToldConditions;
  readonly findings: Judgement;
  readonly "smallest fix": FoundFix;
  readonly comparison: Comparison;
}

/** The change that mends a finding, and what it costs. */
export type ShownFix = Omit<Fix, "text">;

/** The smallest fix; undefined where no single change mends the finding alone. */
export interface FoundFix {
  readonly fix: ShownFix | undefined;
}

/** A unit in a few figures, or why its text has none. */
export type DigestOrProblem =
  | { readonly ok: true; readonly digest: Digest }
  | { readonly ok: false; readonly problem: string };

/** Job texts side by side, in the order asked. */
export interface Comparison {
  readonly digests: readonly DigestOrProblem[];
  readonly inputs: readonly InputChange[];
}

/** The unit found for a duty, or what stands in the way. */
export interface SizingResult {
  readonly outcome: "unit" | "no unit";
  /** The complete job; empty where there is no unit. */
  readonly text: string;
  readonly choices: readonly Choice[];
  /** What of the duty no unit gives, with the nearest duties that work. */
  readonly contradictions: readonly Contradiction[];
}

/** The condition at which alternatives were judged. */
export interface JudgedAt {
  readonly key: string;
  readonly name: string;
}

/** Other coils for a section. */
export interface CoilAlternatives {
  readonly at: JudgedAt;
  readonly choice: CoilChoice;
}

/** Other coils on steam, or of a run-around loop, for a section. */
export interface RatedCoilAlternatives {
  readonly at: JudgedAt;
  readonly ratedChoice: SectionCoilChoice;
}

/** A fan found; its wheel by name. */
export type FoundFan = Omit<FanCandidate, "wheel"> & { readonly wheel: string };

/** Other fans for a section. */
export interface FanAlternatives {
  readonly at: JudgedAt;
  readonly looked: number;
  readonly candidates: readonly FoundFan[];
}

/** Other filters for a bank. */
export interface FilterAlternatives extends FiltersFound {
  readonly at: JudgedAt;
}

/** A text of the program or of the shop, and where it comes from. */
export interface ShelfText {
  readonly path: string;
  readonly text: string;
}

/** What the worker reads jobs and duties by. */
export interface ShelfTexts {
  /** The component records. */
  readonly records: readonly ShelfText[];
  /** Rule profiles; the page adds those of the owner to what the worker has of its own. */
  readonly profiles: readonly ShelfText[];
  /** The shop's books, by which fixes are priced. */
  readonly shop: ShopFiles;
}

/** From the page to the worker. */
export type ToWorker =
  | { readonly say: "shelf"; readonly texts: ShelfTexts }
  | { readonly say: "weather"; readonly name: string; readonly weather: WeatherYear }
  | { readonly say: "do"; readonly id: number; readonly task: Task }
  | { readonly say: "stop"; readonly id: number };

/** From the worker to the page. */
export type FromWorker =
  | { readonly say: "share"; readonly id: number; readonly share: number }
  | { readonly say: "result"; readonly id: number; readonly result: Results[keyof Results] }
  | { readonly say: "problem"; readonly id: number; readonly problem: string };
