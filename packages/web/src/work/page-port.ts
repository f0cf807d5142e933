import type { FromWorker, ToWorker } from "./task.ts";
import type { WorkPort } from "./work-desk.ts";

/** Starts the page's worker. */
export function startWorker(): WorkPort {
  const worker = new Worker(new URL("./long-worker.ts", import.meta.url), { type: "module" });
  return {
    post: (message: ToWorker) => worker.postMessage(message),
    listen: (hear, broken) => {
      worker.addEventListener("message", ({ data }: MessageEvent<FromWorker>) => hear(data));
      worker.addEventListener("error", (event) => {
        worker.terminate();
        broken(event.message === "" ? "the worker could not be started" : event.message);
      });
    },
  };
}
