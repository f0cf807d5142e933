import { BookShelf } from "./book-shelf.ts";
import { perform } from "./perform.ts";
import { shippedProfiles } from "./shipped-profiles.ts";
import type { FromWorker, ShelfTexts, ToWorker } from "./task.ts";

/*
 * The page's worker: does one task after the other, and between two steps listens whether it is to stop.
 */

/** What the worker has been told, and the work that stands before the next. */
const desk: { shelf: BookShelf | undefined; before: Promise<void> } = { shelf: undefined, before: Promise.resolve() };
const stopped = new Set<number>();

const tell = (message: FromWorker) => self.postMessage(message);

/** The shelf with the shipped profiles before the owner's own. */
function shelfOf(texts: ShelfTexts): BookShelf {
  return new BookShelf({ ...texts, profiles: [...shippedProfiles(), ...texts.profiles] });
}

/** Lets messages in. */
function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

async function work({ id, task }: Extract<ToWorker, { say: "do" }>): Promise<void> {
  try {
    const { shelf } = desk;
    if (shelf === undefined) throw new Error("the worker has no books yet");
    await breath();
    const steps = perform(task, shelf);
    while (!stopped.has(id)) {
      const step = steps.next();
      if (step.done === true) {
        tell({ say: "result", id, result: step.value });
        break;
      }
      tell({ say: "share", id, share: step.value });
      await breath();
    }
  } catch (error) {
    tell({ say: "problem", id, problem: error instanceof Error ? error.message : String(error) });
  }
  stopped.delete(id);
}

self.addEventListener("message", ({ data }: MessageEvent<ToWorker>) => {
  if (data.say === "shelf") desk.shelf = shelfOf(data.texts);
  else if (data.say === "weather") desk.shelf?.keepWeather(data.name, data.weather);
  else if (data.say === "stop") stopped.add(data.id);
  else desk.before = desk.before.then(() => work(data));
});
