/*
 * Stands between the page and the server, and keeps every file of the built page. The names of the files are written into it
 * by the build; the interface of the program, which asks for the token, is never touched or kept.
 */

/** Files of the build, from its folder, and a name that changes with them. */
declare const builtFiles: readonly string[];
declare const builtName: string;

/** The part of a service worker's own scope that is used here. */
interface OfflineScope {
  readonly location: Location;
  readonly clients: { readonly claim: () => Promise<void> };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: (name: "install" | "activate" | "fetch", listener: (event: OfflineEvent) => void) => void;
}

interface OfflineEvent {
  readonly request: Request;
  readonly waitUntil: (work: Promise<unknown>) => void;
  readonly respondWith: (answer: Promise<Response>) => void;
}

const scope = self as unknown as OfflineScope;

scope.addEventListener("install", (event) => event.waitUntil(keepAll()));
scope.addEventListener("activate", (event) => event.waitUntil(takeOver()));
scope.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  const isOwn = origin === scope.location.origin && !pathname.startsWith("/api");
  if (request.method === "GET" && isOwn) event.respondWith(answer(request));
});

async function keepAll(): Promise<void> {
  const kept = await caches.open(builtName);
  await kept.addAll(builtFiles.map((file) => new URL(file, scope.location.href).href));
  await scope.skipWaiting();
}

/** Files of earlier builds go; pages that are open are served from now on. */
async function takeOver(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name !== builtName).map((name) => caches.delete(name)));
  await scope.clients.claim();
}

/** The page itself comes from the server while that answers; files whose name says what is in them come from what is kept. */
async function answer(request: Request): Promise<Response> {
  const kept = await caches.match(request, { ignoreSearch: true });
  if (kept !== undefined && /\/assets\//.test(request.url)) return kept;
  try {
    return await fetch(request);
  } catch (error) {
    const page =
      kept ?? (request.mode === "navigate" ? await caches.match(new URL("./", scope.location.href)) : undefined);
    if (page === undefined) throw error;
    return page;
  }
}
