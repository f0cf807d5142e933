import { type Catalogue, readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { type Bench, type Proof, proveJob } from "@oncethrough/engine/mending/smallest-fix";
import { prepareJudge } from "@oncethrough/engine/rule/judge";
import { type Profile, readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import type { ShopBooks } from "@oncethrough/engine/takeoff/shop-book";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { planYear, type YearPlan } from "@oncethrough/engine/year/plan";
import { type HourWeight, representativeHours } from "@oncethrough/engine/year/representative";
import { syntheticYearOfDuty } from "@oncethrough/engine/year/synthetic-duty";
import type { RatingBook } from "#state/rating-book";
import { readText, type SoundJob } from "#state/sound-job";
import { tellConditions } from "#state/tell-conditions";
import type { ToldConditions } from "#state/told-conditions";
import type { ShelfTexts } from "./task.ts";

/** Texts of jobs read lately, with what is solved of them: one text is asked about several times. */
const jobsKept = 4;

/** What the worker works by: records, profiles, and the latest jobs read. */
export class BookShelf {
  readonly catalogue: Catalogue;
  readonly #profiles: ReadonlyMap<string, Profile>;
  readonly #shop: ShopBooks | undefined;
  #weather: { readonly name: string; readonly weather: WeatherYear } | undefined;
  readonly #jobs = new Map<string, SoundJob>();
  #plan: { readonly text: string; readonly weather: WeatherYear | undefined; readonly plan: YearPlan } | undefined;
  #standing: { readonly plan: YearPlan; readonly count: number; readonly hours: readonly HourWeight[] } | undefined;
  #proof: Proof | undefined;

  constructor({ records, profiles, shop }: ShelfTexts) {
    this.catalogue = readCatalogue(records);
    this.#profiles = readProfiles(profiles, rules).byName;
    this.#shop = readShop(shop).books;
  }

  get profileNames(): readonly string[] {
    return [...this.#profiles.keys()];
  }

  /**
   * A job solved, judged, weighed and priced by the profile that it names; the latest is kept.
   *
   * @throws Error when the text is no job, or names a profile that nobody knows
   */
  proof(text: string): { readonly proof: Proof; readonly bench: Bench } {
    const profile = this.profile(this.book(text).job.duty.ownerProfile);
    const bench: Bench = { catalogue: this.catalogue, profile, books: this.#shop };
    if (this.#proof?.text !== text) this.#proof = proveJob(text, bench);
    if (this.#proof === undefined) throw new Error("the text is no sound job");
    return { proof: this.#proof, bench };
  }

  /** @throws Error when the text is no job */
  sound(text: string): SoundJob {
    const known = this.#jobs.get(text) ?? readText(text, this.catalogue, [...this.#jobs.values()].at(-1)).sound;
    if (known?.text !== text) throw new Error("the text is no sound job");
    this.#jobs.delete(text);
    this.#jobs.set(text, known);
    for (const oldest of [...this.#jobs.keys()].slice(0, -jobsKept)) this.#jobs.delete(oldest);
    return known;
  }

  /** @throws Error when the text is no job */
  book(text: string): RatingBook {
    return this.sound(text).book;
  }

  /**
   * All conditions of a job, solved once.
   *
   * @throws Error when the text is no job
   */
  told(text: string): ToldConditions {
    const { book } = this.sound(text);
    if (book.told === undefined) book.take(tellConditions(book));
    return book.told!;
  }

  /** Keeps a year of weather by its name, in place of the one before. */
  keepWeather(name: string, weather: WeatherYear): void {
    this.#weather = { name, weather };
  }

  /** @throws Error when no weather of that name was lent */
  weather(name: string): WeatherYear {
    if (this.#weather?.name === name) return this.#weather.weather;
    throw new Error("the weather is not at hand any more; choose the file again");
  }

  /**
   * The year of a job made ready, with the rules of its owner, in weather that was lent or made up from the design days; the
   * latest is kept.
   *
   * @throws Error when the text is no job, or the weather is not at hand
   */
  plan(text: string, name: string | undefined): YearPlan {
    const lent = name === undefined ? undefined : this.weather(name);
    if (this.#plan?.text === text && this.#plan.weather === lent) return this.#plan.plan;
    const { unit, duty, waivers } = this.book(text).job;
    const judge = prepareJudge(unit, duty, rules, this.profile(duty.ownerProfile), waivers);
    const plan = planYear({ unit, duty, weather: lent ?? syntheticYearOfDuty(duty), judge });
    this.#plan = { text, weather: lent, plan };
    return plan;
  }

  /** So many hours that stand for a year; those of the latest are kept. */
  standing(plan: YearPlan, count: number): readonly HourWeight[] {
    if (this.#standing?.plan !== plan || this.#standing.count !== count)
      this.#standing = { plan, count, hours: representativeHours(plan, count) };
    return this.#standing.hours;
  }

  /** @throws Error when nobody knows a profile of that name */
  profile(name: string): Profile {
    const found = this.#profiles.get(name);
    if (found !== undefined) return found;
    throw new Error(`"${name}" is no owner profile; there are: ${this.profileNames.join(", ")}`);
  }
}
