import { lazy, Suspense } from "react";

/** The solids come by themselves when they are first looked at: the page begins without them. */
const SolidCanvas = lazy(() => import("./solid-canvas.tsx"));

/** The machine in three dimensions. */
export function SolidView() {
  return (
    <Suspense fallback={<p className="quiet">the solids are on their way …</p>}>
      <SolidCanvas />
    </Suspense>
  );
}
