import { useEffect, useSyncExternalStore } from "react";

/** Light, dark, or as the system has it. */
export type Theme = "system" | "light" | "dark";

const key = "oncethrough-theme";
const themes: readonly Theme[] = ["system", "light", "dark"];
const listeners = new Set<() => void>();

/** The theme, remembered. */
export function useTheme(): Theme {
  const theme = useSyncExternalStore(follow, themeNow);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
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
