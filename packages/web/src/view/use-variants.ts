import { createContext, useContext } from "react";
import { useStore } from "zustand";
import { type Variant, type VariantDesk, type VariantStore, variantFile } from "#state/variant-store";
import { useBench } from "./use-bench.ts";

/** The store of variants. */
export const VariantContext = createContext<VariantStore | undefined>(undefined);

const none: readonly Variant[] = [];

/** The variants of the file on the bench, and what can be done with them. */
export function useVariants(): {
  readonly file: string;
  readonly variants: readonly Variant[];
  readonly keep: VariantDesk["keep"];
  readonly drop: VariantDesk["drop"];
} {
  const store = useContext(VariantContext);
  if (store === undefined) throw new Error("variants are asked for outside their page");
  const file = useBench((bench) => variantFile(bench.file));
  const variants = useStore(store, ({ byFile }) => byFile.get(file)) ?? none;
  const { keep, drop } = useStore(store);
  return { file, variants, keep, drop };
}
