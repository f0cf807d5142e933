import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { Problem } from "@oncethrough/engine/form/problem";
import type { Job } from "@oncethrough/engine/job/job";
import { type JobReading, readJob } from "@oncethrough/engine/job/read-job";
import { type KeptMachine, keptMachine } from "./kept-machine.ts";
import type { KeptPrices } from "./kept-prices.ts";
import { RatingBook } from "./rating-book.ts";

/** The latest text that could be read as a job, what it says, how it rates and what it costs. */
export interface SoundJob {
  readonly text: string;
  readonly job: Job;
  readonly reading: JobReading;
  readonly book: RatingBook;
  /** Filled when somebody asks where its parts stand. */
  readonly machine: KeptMachine;
  /** Filled when somebody asks what it costs. */
  readonly prices: KeptPrices;
}

/** A text as read, and the latest sound job: that of this text, or an earlier one. */
export interface ReadText {
  readonly reading: JobReading;
  readonly sound: SoundJob | undefined;
}

/** Reads a text; where it is no sound job, the one before stays. */
export function readText(text: string, catalogue: Catalogue, before: SoundJob | undefined): ReadText {
  if (before?.text === text) return { reading: before.reading, sound: before };
  const reading = readJob(text, catalogue, before?.job);
  if (reading.job === undefined) return { reading, sound: before };
  const { job } = reading;
  const prices = { books: undefined, order: undefined, offer: undefined };
  const names = job.unit.sections.map(({ name }) => name);
  const machine = keptMachine(names, before?.machine);
  const book = new RatingBook(job);
  if (before?.book.hour !== undefined) book.takeHour(before.book.hour);
  return { reading, sound: { text, job, reading, book, machine, prices } };
}

/** The problems that keep the text from being a job. */
export function errorsOf(reading: JobReading): readonly Problem[] {
  return reading.problems.filter((problem) => problem.severity === "error");
}
