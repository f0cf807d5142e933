/// <reference types="vite/client" />
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { ShopFiles } from "@oncethrough/engine/takeoff/read-shop";
import { type BenchState, type JobFile, openedBench } from "./bench-state.ts";

/** The shipped component records. */
export const catalogueFiles = Object.entries(
  import.meta.glob<string>("../../../../catalogue/*.yaml", { query: "?raw", import: "default", eager: true }),
).map(([path, text]) => ({ path, text }));

/** The shipped catalogue. */
export const catalogue = readCatalogue(catalogueFiles);

/** The shipped books of the shop. */
export const shopFiles = shippedShop(
  import.meta.glob<string>("../../../../shop/*.yaml", { query: "?raw", import: "default", eager: true }),
);

function shippedShop(texts: Record<string, string>): ShopFiles {
  const book = (name: string) => ({ path: name, text: texts[`../../../../shop/${name}.yaml`] ?? "" });
  return { prices: book("prices"), rates: book("rates"), stock: book("stock") };
}

/** The shipped owner profiles. */
export const profileFiles = Object.entries(
  import.meta.glob<string>("../../../../profiles/*.yaml", { query: "?raw", import: "default", eager: true }),
).map(([path, text]) => ({ path, text }));

/** A small job for tests: pure outside air through filters and a fan, cooled by nothing. */
export const sampleText = `# a job for tests
format: oncethrough job 1
duty:
  tag: T-1
  site: { altitude: 300 ft }
  supply airflow:
    design: 6000 cfm   # keep
  summer:
    dry bulb day: { dry bulb: 92 °F, wet bulb: 74 °F }
    wet bulb day: { dry bulb: 88 °F, wet bulb: 77 °F }
    dew point day: { dry bulb: 82 °F, dew point: 74 °F }
  winter: { dry bulb: 40 °F, relative humidity: 60 % }
  set points:
    supply: 95 °F
    winter supply: 40 °F
  external static: { pressure: 1 in.wg }
  utilities: {}
unit:
  casing: { width: 72 in, height: 72 in }
  sections:
    - kind: filter bank
      name: filters
      medium: typical MERV 8 pleated 4 in
    - kind: access
    - kind: fan
      diameter: 22 in
      motor power: 10 hp
`;

export const sampleFile: JobFile = {
  name: "sample.yaml",
  origin: "example",
  version: undefined,
  storedText: sampleText,
};

/** A bench with the sample job. */
export function sampleBench(): BenchState {
  return openedBench(sampleFile, catalogue, "ip");
}

/** The demo: a whole unit with return air, steam and chilled water. */
export const demoText = Object.values(
  import.meta.glob<string>("../../../../examples/marine-biology-wing.yaml", {
    query: "?raw",
    import: "default",
    eager: true,
  }),
)[0]!;
