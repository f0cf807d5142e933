import { useMemo } from "react";
import type { FindingLine } from "#state/finding-lines";
import { fixCaveat, fixCosts } from "#state/fix-words";
import { useBench } from "#view/use-bench";
import { foundFix, useFix } from "#view/use-mending";

/** The smallest fix in a line below its finding, where one has been found. */
export function FixHint({ line }: { line: FindingLine }) {
  const fix = foundFix(useFix(line))?.fix;
  const system = useBench((bench) => bench.system);
  const currency = useBench((bench) => bench.shop.books?.prices.currency) ?? "";
  const price = useMemo(
    () => (fix === undefined ? undefined : fixCosts(fix, currency, system)[0]?.[1]),
    [fix, currency, system],
  );
  if (fix === undefined) return null;
  return (
    <p className="fix-hint">
      smallest fix: {fixCaveat(fix)}
      {fix.words} {fix.before === "" ? "" : `${fix.before} → `}
      {fix.value}, {price === "no change" ? "at no price" : price}
    </p>
  );
}
