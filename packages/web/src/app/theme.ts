import { useLayoutEffect, useSyncExternalStore } from "react";

/** Light, dark, or as the system has it. */
export type Theme = "system" | "light" | "dark";

const key = "oncethrough-theme";
const themes: readonly Theme[] = ["system", "light", "dark"];
const listeners = new Set<() => void>();

const systemDark = window.matchMedia("(prefers-color-scheme: dark)");

/** The theme, remembered; the page is set light or dark by it. */
export function useTheme(): Theme {
  const theme = useSyncExternalStore(follow, themeNow);
  const isSystemDark = useSyncExternalStore(followSystem, () => systemDark.matches);
  const worn = theme === "system" ? (isSystemDark ? "dark" : "light") : theme;
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = worn;
  }, [worn]);
  return theme;
}

/** From the theme to the one after it. */
export function toNextTheme(): void {
  localStorage.setItem(key, themes[(themes.indexOf(themeNow()) + 1) % themes.length] ?? "system");
  for (const listener of listeners) listener();
}

function themeNow(): Theme {
  return themes.find((each) => each === localStorage.getItem(key)) ?? "system";
}

function follow(onChange: () => void): () => void {
  listeners.add(onChange);
  return () => listeners.delete(onChange);
}

function followSystem(onChange: () => void): () => void {
  systemDark.addEventListener("change", onChange);
  return () => systemDark.removeEventListener("change", onChange);
}
