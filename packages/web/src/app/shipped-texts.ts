import type { CatalogueFile } from "@oncethrough/engine/catalogue/read-catalogue";
import type { ShopFiles } from "@oncethrough/engine/takeoff/read-shop";

/** The generic component records that come with the program. */
export function shippedCatalogue(): readonly CatalogueFile[] {
  const texts = import.meta.glob<string>("../../../../catalogue/*.yaml", {
    query: "?raw",
    import: "default",
    eager: true,
  });
  return filesOf(texts);
}

/** The example that the page opens where nobody hands it a job. */
const demo = "examples/marine-biology-wing.yaml";

/** The example jobs that come with the program, the demo first. */
export function shippedExamples(): readonly CatalogueFile[] {
  const texts = import.meta.glob<string>("../../../../examples/*.yaml", {
    query: "?raw",
    import: "default",
    eager: true,
  });
  return filesOf(texts).toSorted((one, other) => Number(other.path === demo) - Number(one.path === demo));
}

/** The owner profiles that come with the program. */
export function shippedProfiles(): readonly CatalogueFile[] {
  return filesOf(
    import.meta.glob<string>("../../../../profiles/*.yaml", { query: "?raw", import: "default", eager: true }),
  );
}

/** The books of the shop that come with the program. */
export function shippedBooks(): ShopFiles {
  const texts = import.meta.glob<string>("../../../../shop/*.yaml", { query: "?raw", import: "default", eager: true });
  const files = filesOf(texts);
  const book = (name: string) => files.find(({ path }) => path === `shop/${name}.yaml`) ?? { path: name, text: "" };
  return { prices: book("prices"), rates: book("rates"), stock: book("stock") };
}

function filesOf(texts: Record<string, string>): readonly CatalogueFile[] {
  return Object.entries(texts)
    .map(([path, text]) => ({ path: path.replace(/^(\.\.\/)+/, ""), text }))
    .sort((one, other) => one.path.localeCompare(other.path));
}
