import type { JobFile } from "./bench-state.ts";
import type { DraftStorage } from "./draft.ts";

/** A job that was on the bench lately. */
export type RecentJob = Pick<JobFile, "name" | "origin">;

const key = "oncethrough-recent";
const mostKept = 8;

/** The jobs that were on the bench lately, the latest first. */
export function recentJobs(storage: DraftStorage): readonly RecentJob[] {
  try {
    const found: unknown = JSON.parse(storage.getItem(key) ?? "[]");
    return Array.isArray(found) ? found.filter(isRecent) : [];
  } catch {
    return [];
  }
}

/** Puts a job first among the recent ones. */
export function rememberJob(storage: DraftStorage, { name, origin }: RecentJob): void {
  const others = recentJobs(storage).filter((each) => each.name !== name || each.origin !== origin);
  try {
    storage.setItem(key, JSON.stringify([{ name, origin }, ...others].slice(0, mostKept)));
  } catch {
    // A browser without room forgets; nothing else depends on it.
  }
}

function isRecent(value: unknown): value is RecentJob {
  const { name, origin } = (value ?? {}) as Record<string, unknown>;
  return typeof name === "string" && (origin === "server" || origin === "disk" || origin === "example");
}
