import { type RefObject, useLayoutEffect, useRef, useState, useSyncExternalStore } from "react";

/** The width of an element in px, followed as the page changes; zero before it is first measured. */
export function useWidth<Kind extends HTMLElement>(): readonly [RefObject<Kind | null>, number] {
  const element = useRef<Kind>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const watched = element.current;
    if (watched === null) return;
    setWidth(watched.clientWidth);
    const observer = new ResizeObserver(() => setWidth(watched.clientWidth));
    observer.observe(watched);
    return () => observer.disconnect();
  }, []);
  return [element, width];
}

/** The height of the window in px, followed as it changes. */
export function usePageHeight(): number {
  return useSyncExternalStore(followPage, () => window.innerHeight);
}

function followPage(onChange: () => void): () => void {
  window.addEventListener("resize", onChange);
  return () => window.removeEventListener("resize", onChange);
}
