import { type Catalogue, readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { Job } from "@oncethrough/engine/job/job";
import { readJob } from "@oncethrough/engine/job/read-job";
import { prepareJudge } from "@oncethrough/engine/rule/judge";
import { type ProfileFile, type Profiles, readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { planYear, type YearPlan } from "@oncethrough/engine/year/plan";
import type { HourWeight } from "@oncethrough/engine/year/representative";
import { type SegmentResult, startSegment, stepSegment } from "@oncethrough/engine/year/segment";
import { solveTrial, type Trial } from "@oncethrough/engine/year/uncertainty";

/** All that years follow from, as plain data that a thread can be given. */
export interface YearSetup {
  readonly jobs: readonly SetupJob[];
  readonly catalogue: readonly { readonly path: string; readonly text: string }[];
  readonly profiles: readonly ProfileFile[];
  readonly weather: WeatherYear;
}

/** A job's text, and the owner by whose rules its hours are judged. */
export interface SetupJob {
  readonly text: string;
  readonly profile: string;
}

/** A piece of work on one of the jobs, by its place in the setup. */
export type YearTask =
  | { readonly kind: "segment"; readonly job: number; readonly segment: number }
  | {
      readonly kind: "trial";
      readonly job: number;
      readonly trial: number;
      readonly seed: number;
      readonly hours: readonly HourWeight[];
    };

/** What a piece of work comes to; plain data that a thread can send. */
export type TaskResult = SegmentResult | Trial;

/** Reads the setup once and makes the years of its jobs ready as they are asked for. */
export class YearDesk {
  readonly #setup: YearSetup;
  readonly #catalogue: Catalogue;
  readonly #profiles: Profiles;
  readonly #jobs = new Map<number, Job>();
  readonly #plans = new Map<number, YearPlan>();

  constructor(setup: YearSetup) {
    this.#setup = setup;
    this.#catalogue = readCatalogue(setup.catalogue);
    this.#profiles = readProfiles(setup.profiles, rules);
  }

  #job(place: number): Job {
    const known = this.#jobs.get(place);
    if (known !== undefined) return known;
    const { job } = readJob(this.#setup.jobs[place]?.text ?? "", this.#catalogue);
    if (job === undefined) throw new Error("a job that was read before has errors now");
    this.#jobs.set(place, job);
    return job;
  }

  /** Its year, with the rules of its owner. */
  plan(place: number): YearPlan {
    const known = this.#plans.get(place);
    if (known !== undefined) return known;
    const { unit, duty, waivers } = this.#job(place);
    const profile = this.#profiles.byName.get(this.#setup.jobs[place]!.profile);
    if (profile === undefined) throw new Error(`there is no owner profile ${this.#setup.jobs[place]!.profile}`);
    const judge = prepareJudge(unit, duty, rules, profile, waivers);
    const plan = planYear({ unit, duty, weather: this.#setup.weather, judge });
    this.#plans.set(place, plan);
    return plan;
  }

  /** Does a piece of work. */
  perform(task: YearTask): TaskResult {
    const plan = this.plan(task.job);
    if (task.kind === "trial") return solveTrial(plan, task.hours, task.seed, task.trial);
    const run = startSegment(plan, task.segment);
    stepSegment(run, Number.POSITIVE_INFINITY);
    return run.result;
  }
}
