import { useMemo } from "react";
import type { OrderSum } from "#state/kept-prices";
import { orderOf } from "#state/unit-pricing";
import { useArrangement } from "./use-arrangement.ts";
import { useBench } from "./use-bench.ts";

/** The order as it stands and as it stood before the last act. */
export interface OrdersInHand {
  readonly now: OrderSum;
  readonly before: OrderSum | undefined;
  /** The act between them. */
  readonly act: string;
}

/** The order in hand; undefined without a sound job or without sound books. */
export function useOrders(): OrdersInHand | undefined {
  const sound = useBench((bench) => bench.sound);
  const before = useBench((bench) => bench.before);
  const books = useBench((bench) => bench.shop.books);
  const arrangement = useArrangement();
  return useMemo(() => {
    // The price follows the machine, which follows the conditions solved.
    if (sound === undefined || books === undefined || arrangement === undefined) return undefined;
    return {
      now: orderOf(sound, books),
      before: before === undefined ? undefined : orderOf(before.sound, books),
      act: before?.act ?? "",
    };
  }, [sound, before, books, arrangement]);
}
