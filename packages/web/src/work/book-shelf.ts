import { type Catalogue, readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { type Bench, type Proof, proveJob } from "@oncethrough/engine/mending/smallest-fix";
import { type Profile, readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import type { ShopBooks } from "@oncethrough/engine/takeoff/shop-book";
import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
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

  /** @throws Error when nobody knows a profile of that name */
  profile(name: string): Profile {
    const found = this.#profiles.get(name);
    if (found !== undefined) return found;
    throw new Error(`"${name}" is no owner profile; there are: ${this.profileNames.join(", ")}`);
  }
}
