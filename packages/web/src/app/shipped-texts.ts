import type { CatalogueFile } from "@oncethrough/engine/catalogue/read-catalogue";

/** The generic component records that come with the program. */
export function shippedCatalogue(): readonly CatalogueFile[] {
  const texts = import.meta.glob<string>("../../../../catalogue/*.yaml", {
    query: "?raw",
    import: "default",
    eager: true,
  });
  return filesOf(texts);
}

/** An example job, whose text is fetched when somebody wants it. */
export interface ShippedExample {
  readonly path: string;
  readonly text: () => Promise<string>;
}

/** The example that the page opens where nobody hands it a job. */
const demo = "examples/marine-biology-wing.yaml";

/** The example jobs that come with the program, the demo first. */
export function shippedExamples(): readonly ShippedExample[] {
  const texts = import.meta.glob<string>("../../../../examples/*.yaml", { query: "?raw", import: "default" });
  return Object.entries(texts)
    .map(([path, text]) => ({ path: shippedPath(path), text }))
    .sort((one, other) => Number(other.path === demo) - Number(one.path === demo) || byPath(one, other));
}

function filesOf(texts: Record<string, string>): readonly CatalogueFile[] {
  return Object.entries(texts)
    .map(([path, text]) => ({ path: shippedPath(path), text }))
    .sort(byPath);
}

function shippedPath(path: string): string {
  return path.replace(/^(\.\.\/)+/, "");
}

function byPath(one: { readonly path: string }, other: { readonly path: string }): number {
  return one.path.localeCompare(other.path);
}
