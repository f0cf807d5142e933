import type { BenchStore } from "#state/bench-store";

/**
 * Solves the conditions that nobody looks at yet, one at a time, whenever the page has nothing else to do. A new sound
 * job begins anew.
 */
export function solveRest(store: BenchStore): void {
  let waiting = false;
  const next = () => {
    waiting = false;
    if (store.getState().actions.solveNext()) later();
  };
  const later = () => {
    if (waiting) return;
    waiting = true;
    // The pause lets edits and pointer moves come first.
    setTimeout(next, 12);
  };
  store.subscribe((now, before) => {
    if (now.sound !== before.sound) later();
  });
  later();
}
