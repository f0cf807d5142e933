import type { CatalogueFile } from "@oncethrough/engine/catalogue/read-catalogue";
import type { ShopFiles } from "@oncethrough/engine/takeoff/read-shop";

/** A job as the server holds it. */
export interface ServedJob {
  readonly name: string;
  readonly text: string;
  readonly version: string;
}

/** What became of a save. */
export type SaveOutcome =
  | { readonly outcome: "saved"; readonly version: string }
  | { readonly outcome: "changed on disk"; readonly version: string; readonly text: string }
  | { readonly outcome: "failed"; readonly problem: string };

/** The server that the page came from. */
export interface JobServer {
  /** The job of that name, or the one that the program was started with; undefined when there is none. */
  readonly job: (name?: string) => Promise<ServedJob | undefined>;
  readonly jobNames: () => Promise<readonly string[]>;
  readonly shopCatalogue: () => Promise<readonly CatalogueFile[]>;
  /** The owners' own rule profiles. */
  readonly ownProfiles: () => Promise<readonly CatalogueFile[]>;
  /** The books of the shop; undefined when the server gives none. */
  readonly shopBooks: () => Promise<ShopFiles | undefined>;
  readonly save: (name: string, text: string, version: string | undefined) => Promise<SaveOutcome>;
}

const tokenKey = "oncethrough-token";

/**
 * The token out of the page's address, which is cleaned of it; a reloaded page finds it in the session's storage.
 * Undefined when the page was not opened by the printed address.
 */
export function takeToken(page: Window): string | undefined {
  const { location, history, sessionStorage } = page;
  const given =
    new URLSearchParams(location.hash.slice(1)).get("token") ?? new URLSearchParams(location.search).get("token");
  if (given === null) return sessionStorage.getItem(tokenKey) ?? undefined;
  sessionStorage.setItem(tokenKey, given);
  history.replaceState(null, "", location.pathname);
  return given;
}

/** The server behind a token. */
export function jobServer(token: string): JobServer {
  const ask = (path: string, init: RequestInit = {}) =>
    fetch(`/api/${path}`, {
      ...init,
      headers: { "x-oncethrough-token": token, ...init.headers },
      credentials: "same-origin",
    });
  const read = async <Answer>(path: string): Promise<Answer | undefined> => {
    const answer = await ask(path);
    return answer.ok ? ((await answer.json()) as Answer) : undefined;
  };
  const files = async (path: string) => (await read<{ readonly files: readonly CatalogueFile[] }>(path))?.files ?? [];
  return {
    job: (name) => read<ServedJob>(name === undefined ? "job" : `job?name=${encodeURIComponent(name)}`),
    jobNames: async () => {
      const found = await read<{ readonly jobs: readonly { readonly name: string }[] }>("jobs");
      return found?.jobs.map((job) => job.name) ?? [];
    },
    shopCatalogue: () => files("catalogue"),
    ownProfiles: () => files("profiles"),
    shopBooks: () => read<ShopFiles>("shop"),
    save: async (name, text, version) => {
      const body = JSON.stringify({ name, text, version: version ?? null });
      const answer = await ask("job", { method: "PUT", headers: { "content-type": "application/json" }, body });
      const said = (await answer.json()) as { version?: string; text?: string; problem?: string };
      if (answer.ok) return { outcome: "saved", version: said.version ?? "" };
      if (answer.status === 409 && said.text !== undefined) {
        return { outcome: "changed on disk", version: said.version ?? "", text: said.text };
      }
      return { outcome: "failed", problem: said.problem ?? `the server answered ${answer.status}` };
    },
  };
}
