import type { JobFile } from "#state/bench-state";
import type { BenchStore } from "#state/bench-store";
import { type DraftStorage, draftOf, keepDraft } from "#state/draft";
import { type RecentJob, recentJobs, rememberJob } from "#state/recent-jobs";
import { type ChosenFile, storeFile } from "./file-picker.ts";
import type { JobServer, ServedJob } from "./job-server.ts";
import type { ShippedExample } from "./shipped-texts.ts";

/** The stored text changed while the person worked: what stands there now. */
export interface Conflict {
  readonly name: string;
  readonly version: string;
  readonly text: string;
}

/** Opens and saves jobs, wherever they are kept. */
export interface JobDesk {
  readonly server: JobServer | undefined;
  readonly examples: readonly ShippedExample[];
  /** Jobs that were on the bench lately, the latest first. */
  readonly recent: () => readonly RecentJob[];
  readonly openServed: (name: string) => Promise<void>;
  readonly openExample: (path: string) => Promise<void>;
  readonly openChosen: (file: ChosenFile) => void;
  /** A job that is stored nowhere yet. */
  readonly openNew: (name: string, text: string) => void;
  /** Saves; a conflict is given back for the person to decide. */
  readonly save: () => Promise<Conflict | undefined>;
  /** Ends a conflict: the text in hand is stored over the other, or the other is taken. */
  readonly settle: (conflict: Conflict, keep: "mine" | "theirs") => Promise<Conflict | undefined>;
}

/** A desk for the store; unsaved text is kept in `storage` at every change. */
export function createJobDesk(
  store: BenchStore,
  server: JobServer | undefined,
  examples: readonly ShippedExample[],
  storage: DraftStorage,
  page: Window,
): JobDesk {
  let handle: FileSystemFileHandle | undefined;
  const { actions } = store.getState();

  const open = (file: JobFile) => {
    actions.open(file);
    takeDraft(store, storage);
  };
  const openServed = async (name: string) => {
    const job = await server?.job(name);
    if (job === undefined) return say(store, `${name} could not be read`);
    handle = undefined;
    open(servedFile(job));
  };
  const saveServed = async (version: string | undefined): Promise<Conflict | undefined> => {
    const { file, text } = store.getState();
    const name = file.name.split("/").at(-1) ?? file.name;
    const said = await server?.save(name, text, version);
    if (said?.outcome === "saved") {
      actions.markSaved({ name, origin: "server", version: said.version, storedText: text });
    } else if (said?.outcome === "changed on disk") {
      return { name, version: said.version, text: said.text };
    } else {
      say(store, said?.problem ?? "there is no server to save to");
    }
    return undefined;
  };
  const saveLocal = async () => {
    const { file, text } = store.getState();
    const stored = await storeFile(page, file.name.split("/").at(-1) ?? "job.yaml", text, handle);
    if (stored === undefined) return;
    handle = stored.handle;
    actions.markSaved({ name: stored.name, origin: "disk", version: undefined, storedText: text });
  };
  const save = async () => {
    const { file } = store.getState();
    try {
      if (server !== undefined && file.origin !== "disk") return await saveServed(file.version);
      await saveLocal();
    } catch (error) {
      say(store, `not saved: ${error instanceof Error ? error.message : String(error)}`);
    }
    return undefined;
  };

  takeDraft(store, storage);
  rememberJob(storage, store.getState().file);
  let wasKept = true;
  store.subscribe((now, before) => {
    if (now.text === before.text && now.file === before.file) return;
    if (now.file !== before.file) rememberJob(storage, now.file);
    const isKept = keepDraft(storage, now.file, now.text);
    if (!isKept && wasKept) say(store, "the browser has no room to keep unsaved text; save often");
    wasKept = isKept;
  });
  return {
    server,
    examples,
    recent: () => recentJobs(storage),
    openServed,
    openExample: async (path) => {
      const text = await examples
        .find((each) => each.path === path)
        ?.text()
        .catch(() => undefined);
      if (text === undefined) return say(store, `${path} could not be fetched`);
      handle = undefined;
      open(exampleFile(path, text));
    },
    openChosen: (file) => {
      handle = file.handle;
      open({ name: file.name, origin: "disk", version: undefined, storedText: file.text });
    },
    openNew: (name, text) => {
      handle = undefined;
      actions.open(
        { name, origin: server === undefined ? "disk" : "server", version: undefined, storedText: "" },
        text,
      );
    },
    save,
    settle: async (conflict, keep) => {
      if (keep === "mine") return saveServed(conflict.version);
      actions.open({ name: conflict.name, origin: "server", version: conflict.version, storedText: conflict.text });
      return undefined;
    },
  };
}

/** A job of the server as a file of the bench. */
export function servedFile(job: ServedJob): JobFile {
  return { name: job.name, origin: "server", version: job.version, storedText: job.text };
}

/** An example as a file of the bench. */
export function exampleFile(path: string, text: string): JobFile {
  return { name: path, origin: "example", version: undefined, storedText: text };
}

/** Text that was not saved last time comes back as a step that can be undone. */
function takeDraft(store: BenchStore, storage: DraftStorage): void {
  const { file, actions } = store.getState();
  const draft = draftOf(storage, file);
  if (draft === undefined) return;
  actions.replaceText("unsaved text of last time", draft.text);
  const changed = draft.storedText !== file.storedText;
  const words = changed
    ? "the unsaved text of last time is back, but the file has changed since; undo shows the file"
    : "the unsaved text of last time is back; undo shows the file";
  actions.notice({ text: words, weight: changed ? "caution" : "information" });
}

function say(store: BenchStore, text: string): void {
  store.getState().actions.notice({ text, weight: "caution" });
}
