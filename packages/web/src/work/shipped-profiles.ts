import type { ShelfText } from "./task.ts";

/** The owner profiles that come with the program; only workers read profiles, so they travel with the worker. */
export function shippedProfiles(): readonly ShelfText[] {
  const texts = import.meta.glob<string>("../../../../profiles/*.yaml", {
    query: "?raw",
    import: "default",
    eager: true,
  });
  return Object.entries(texts).map(([path, text]) => ({ path: path.replace(/^(\.\.\/)+/, ""), text }));
}
