import { createStore, type StoreApi } from "zustand/vanilla";
import type { JobFile } from "./bench-state.ts";
import type { DraftStorage } from "./draft.ts";

/** A job text that was put by under a name, to be held against others. */
export interface Variant {
  readonly name: string;
  readonly text: string;
}

/** The variants of every file that has some, and what can be done with them. */
export interface VariantDesk {
  readonly byFile: ReadonlyMap<string, readonly Variant[]>;
  /** Puts a text by; one of the same name gives way. False when the browser had no room: it then lives as long as the page. */
  readonly keep: (file: string, variant: Variant) => boolean;
  readonly drop: (file: string, name: string) => void;
}

/** The store of variants. */
export type VariantStore = StoreApi<VariantDesk>;

const key = "oncethrough-variants";

/** What a file's variants are kept under. */
export function variantFile({ origin, name }: Pick<JobFile, "origin" | "name">): string {
  return `${origin}:${name}`;
}

/** A name that no variant has yet: `variant 3`. */
export function nextVariantName(variants: readonly Variant[]): string {
  for (let number = variants.length + 1; ; number++) {
    const name = `variant ${number}`;
    if (!variants.some((each) => each.name === name)) return name;
  }
}

/** Variants that outlive the page. */
export function createVariantStore(storage: DraftStorage): VariantStore {
  return createStore<VariantDesk>()((set, get) => {
    const become = (file: string, variants: readonly Variant[]): boolean => {
      const byFile = new Map(get().byFile);
      if (variants.length === 0) byFile.delete(file);
      else byFile.set(file, variants);
      set({ byFile });
      return stored(storage, byFile);
    };
    const others = (file: string, name: string) => (get().byFile.get(file) ?? []).filter((each) => each.name !== name);
    return {
      byFile: known(storage),
      keep: (file, variant) => become(file, [...others(file, variant.name), variant]),
      drop: (file, name) => void become(file, others(file, name)),
    };
  });
}

function stored(storage: DraftStorage, byFile: VariantDesk["byFile"]): boolean {
  try {
    storage.setItem(key, JSON.stringify([...byFile]));
    return true;
  } catch {
    return false;
  }
}

function known(storage: DraftStorage): VariantDesk["byFile"] {
  try {
    const found: unknown = JSON.parse(storage.getItem(key) ?? "[]");
    return new Map(Array.isArray(found) ? found.filter(isFileVariants) : []);
  } catch {
    return new Map();
  }
}

function isFileVariants(value: unknown): value is [string, readonly Variant[]] {
  if (!Array.isArray(value) || typeof value[0] !== "string" || !Array.isArray(value[1])) return false;
  return value[1].every((each: unknown) => {
    const { name, text } = (each ?? {}) as Record<string, unknown>;
    return typeof name === "string" && typeof text === "string";
  });
}
