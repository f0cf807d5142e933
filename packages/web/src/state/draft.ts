import type { JobFile } from "./bench-state.ts";

/** What the page needs of the browser's storage; a plain map will do in tests. */
export interface DraftStorage {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, value: string) => void;
  readonly removeItem: (key: string) => void;
}

/** Text that was not saved when the page went away. */
export interface Draft {
  readonly text: string;
  /** The stored text that it was made from; another one on the disk means that both have changed. */
  readonly storedText: string;
}

const keyOf = (file: Pick<JobFile, "name" | "origin">) => `oncethrough-draft:${file.origin}:${file.name}`;

/** Keeps the text of a file that is not saved; once it is as stored, the draft goes. False when there was no room. */
export function keepDraft(storage: DraftStorage, file: JobFile, text: string): boolean {
  const key = keyOf(file);
  try {
    if (text === file.storedText) storage.removeItem(key);
    else storage.setItem(key, JSON.stringify({ text, storedText: file.storedText } satisfies Draft));
    return true;
  } catch {
    return false;
  }
}

/** The draft of a file, when there is one that says something else than the file. */
export function draftOf(storage: DraftStorage, file: JobFile): Draft | undefined {
  try {
    const found: unknown = JSON.parse(storage.getItem(keyOf(file)) ?? "null");
    if (!isDraft(found) || found.text === file.storedText) return undefined;
    return found;
  } catch {
    return undefined;
  }
}

function isDraft(value: unknown): value is Draft {
  if (typeof value !== "object" || value === null) return false;
  const { text, storedText } = value as Record<string, unknown>;
  return typeof text === "string" && typeof storedText === "string";
}
