import { wetBulbFromHumidityRatio } from "#fluid/wet-bulb";
import type { QuantityKind } from "#quantity/kind";
import type { BuildLine, SectionRating } from "#section/contract";
import { declaredNotes } from "#section/declared-notes";
import { absolutePressure, actualAirflow, airDensity } from "#section/station";
import type { UnitRating } from "#unit/rating";
import { declaredOf } from "#unit/report";
import type { Unit, UnitSection } from "#unit/unit";

/** A figure that a supplier has to meet. */
export interface OrderFigure {
  readonly name: string;
  readonly quantity: QuantityKind | "count" | "factor";
  readonly value: number;
}

/** The declared rating that a part is ordered by, ours at the same point beside it, and what to mind before ordering. */
export interface OrderDeclared {
  readonly number: string;
  readonly revision: string;
  readonly figures: readonly (OrderFigure & { readonly ours: number })[];
  /** How far the two lie apart, and in what the declared point differs from the condition: air, density, wet or dry, circuits, glycol. */
  readonly notes: readonly string[];
}

/** What a section's bought parts are ordered by: our figures at the hardest condition, and the supplier's own where given. */
export interface OrderData {
  readonly owner: string;
  /** Name of the condition at which the first figure is greatest. */
  readonly condition: string;
  /** The entering air, then what is asked of the part there. */
  readonly figures: readonly OrderFigure[];
  /** What it is to be built as. */
  readonly build: readonly BuildLine[];
  readonly declared: OrderDeclared | undefined;
}

interface Hardest {
  readonly most: number;
  readonly data: OrderData;
}

/** Section by section, what its bought parts are ordered by: of all ratings of the unit the hardest. */
export function orderData(unit: Unit, ratings: readonly UnitRating[]): readonly OrderData[] {
  const hardest = new Map<string, Hardest>();
  for (const rating of ratings) {
    const { condition } = rating;
    if (condition.flow.mode === "fan stopped" || !rating.solved) continue;
    const declared = declaredOf(unit, rating);
    unit.sections.forEach((section, index) => {
      const figures = orderFigures(section, rating.sections[index]!);
      const most = figures[0]?.value ?? Number.NaN;
      const known = hardest.get(section.name);
      if (figures.length === 0 || (known !== undefined && !(most > known.most))) return;
      const comparison = declared.find((each) => each.section === section.name);
      const data = {
        owner: section.name,
        condition: condition.name,
        figures: [...enteringAir(rating.sections[index]!), ...figures],
        build: section.behaviour.orderBuild?.(section.design) ?? [],
        declared:
          comparison === undefined
            ? undefined
            : {
                number: comparison.number,
                revision: comparison.revision,
                figures: comparison.lines.map(({ what, quantity, declared: value, ours }) => ({
                  name: what,
                  quantity,
                  value,
                  ours,
                })),
                notes: declaredNotes(comparison).map(({ what }) => what),
              },
      };
      hardest.set(section.name, { most, data });
    });
  }
  return unit.sections.flatMap(({ name }) => hardest.get(name)?.data ?? []);
}

function enteringAir({ entering }: SectionRating): readonly OrderFigure[] {
  const { dryBulb, humidityRatio } = entering;
  const wetBulb = wetBulbFromHumidityRatio(dryBulb, humidityRatio, absolutePressure(entering));
  return [
    { name: "entering airflow", quantity: "actualAirflow", value: actualAirflow(entering) },
    { name: "entering dry bulb", quantity: "temperature", value: dryBulb },
    { name: "entering wet bulb", quantity: "temperature", value: wetBulb },
    { name: "density of the entering air", quantity: "density", value: airDensity(entering) },
  ];
}

function orderFigures({ behaviour }: UnitSection, rating: SectionRating): readonly OrderFigure[] {
  return (behaviour.orderBy ?? []).flatMap((figure) => {
    const line = behaviour.figures.find((each) => each.figure === figure);
    const value = rating[figure] as unknown;
    if (line === undefined || typeof value !== "number") return [];
    return [{ name: line.name, quantity: line.quantity, value }];
  });
}
