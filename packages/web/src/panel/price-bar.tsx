import { lazy, Suspense } from "react";
import { DrawnOrSaid } from "#view/drawn-or-said.tsx";
import { useBench } from "#view/use-bench";
import "./price-bar.css";

/** What prices the machine comes right behind the page, which does not wait for it. */
const PriceLine = lazy(() => import("./price-line.tsx"));

/** Price, mass and length of the order, always in sight, with what the last act changed. */
export function PriceBar() {
  const attempt = useBench((bench) => bench.sound?.text);
  return (
    <section className="price-bar" aria-label="price and mass">
      <DrawnOrSaid what="the price" attempt={attempt}>
        <Suspense fallback={<p className="quiet">counting …</p>}>
          <PriceLine />
        </Suspense>
      </DrawnOrSaid>
    </section>
  );
}
