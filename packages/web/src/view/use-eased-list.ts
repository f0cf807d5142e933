import type { DisplayItem, DisplayList } from "@oncethrough/engine/section/display";
import { useEffect, useRef, useState } from "react";

/** ms that a drawing takes to move to its new shape. */
const duration = 200;

/**
 * A display list that moves to its next shape in a fifth of a second, so that the eye sees what an edit moved. Items
 * keep their keys; what is new or gone is there or gone at once. Nothing moves for people who ask for no motion, nor
 * when `still` changes (another width, another job).
 */
export function useEasedList(list: DisplayList | undefined, still: unknown): DisplayList | undefined {
  const [shown, setShown] = useState(list);
  const latest = useRef({ list: shown, still });
  useEffect(() => {
    const from = latest.current.list;
    const isStill = latest.current.still !== still || from === undefined || list === undefined || !wantsMotion();
    latest.current.still = still;
    const show = (next: DisplayList | undefined) => {
      latest.current.list = next;
      setShown(next);
    };
    if (isStill || from === list) {
      show(list);
      return;
    }
    const start = performance.now();
    const before = new Map(from.items.map((item) => [item.key, item]));
    let frame = requestAnimationFrame(function step(now) {
      const share = Math.min(1, (now - start) / duration);
      show(share >= 1 ? list : between(before, list, eased(share)));
      if (share < 1) frame = requestAnimationFrame(step);
    });
    return () => cancelAnimationFrame(frame);
  }, [list, still]);
  // A list that must not move is shown in the same frame.
  return latest.current.still === still ? shown : list;
}

function wantsMotion(): boolean {
  return !window.matchMedia("(prefers-reduced-motion: reduce)").matches;
}

function eased(share: number): number {
  return 1 - (1 - share) ** 3;
}

function between(before: ReadonlyMap<string, DisplayItem>, list: DisplayList, share: number): DisplayList {
  return { ...list, items: list.items.map((item) => movedItem(before.get(item.key), item, share)) };
}

/** The item on its way from what it was; itself when there is nothing to move. */
function movedItem(from: DisplayItem | undefined, to: DisplayItem, share: number): DisplayItem {
  if (from === undefined || from === to) return to;
  const mix = (one: number, other: number) => one + (other - one) * share;
  if (from.shape === "line" && to.shape === "line") {
    if (from.points.length !== to.points.length) return to;
    const isSame = to.points.every((value, index) => value === from.points[index]);
    return isSame ? to : { ...to, points: to.points.map((value, index) => mix(from.points[index]!, value)) };
  }
  if (from.shape === "line" || to.shape === "line") return to;
  if (from.x === to.x && from.y === to.y) return to;
  return { ...to, x: mix(from.x, to.x), y: mix(from.y, to.y) };
}
