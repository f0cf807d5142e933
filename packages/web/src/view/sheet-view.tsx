import { lazy, Suspense } from "react";

/** The sheets weigh the unit and come by themselves when they are first looked at. */
const SheetCanvas = lazy(() => import("./sheet-canvas.tsx"));

/** Plan or ends of the machine. */
export function SheetView({ view, width }: { view: "plan" | "ends"; width: number }) {
  return (
    <Suspense fallback={<p className="quiet">the sheet is on its way …</p>}>
      <SheetCanvas view={view} width={width} />
    </Suspense>
  );
}
