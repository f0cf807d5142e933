import type { BenchStore } from "#state/bench-store";
import { tellConditions } from "#state/tell-conditions";
import type { ToldConditions } from "#state/told-conditions";
import { taskKey, type WorkDesk } from "#work/work-desk";

/**
 * Has the conditions that nobody looks at solved by a worker, for every new sound job; where no worker can, they are solved
 * here.
 */
export function solveRest(store: BenchStore, desk: WorkDesk): void {
  const taskOf = (text: string) => ({ kind: "conditions", text }) as const;
  const ask = () => {
    const { sound } = store.getState();
    if (sound === undefined || sound.book.told !== undefined) return;
    desk.ask(taskOf(sound.text));
    hear();
  };
  const hear = () => {
    const { sound, actions } = store.getState();
    if (sound === undefined || sound.book.told !== undefined) return;
    const work = desk.states.getState().get(taskKey(taskOf(sound.text)));
    if (work?.is === "done") actions.takeConditions(sound.text, work.result as ToldConditions);
    else if (work?.is === "failed") actions.takeConditions(sound.text, tellConditions(sound.book));
  };
  desk.states.subscribe(hear);
  store.subscribe((now, before) => {
    if (now.sound !== before.sound) ask();
  });
  ask();
}
