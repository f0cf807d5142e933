import { useEffect, useState } from "react";

/** Light, dark, or as the system has it. */
export type Theme = "system" | "light" | "dark";

const key = "oncethrough-theme";
const themes: readonly Theme[] = ["system", "light", "dark"];

/** The theme, remembered, and a way to the next one. */
export function useTheme(): readonly [Theme, () => void] {
  const [theme, setTheme] = useState<Theme>(
    () => themes.find((each) => each === localStorage.getItem(key)) ?? "system",
  );
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
    localStorage.setItem(key, theme);
  }, [theme]);
  const next = () => setTheme((now) => themes[(themes.indexOf(now) + 1) % themes.length] ?? "system");
  return [theme, next];
}
