import type { Arrangement } from "#arrangement/arrange";
import type { DoorSwing } from "#arrangement/door-swing";
import type { ServiceSpace } from "#arrangement/service-space";
import { line, rectangle, words } from "#chart/items";
import { textSizes, textWidth } from "#chart/text-size";
import type { DisplayItem } from "#section/display";
import type { DimensionStyle } from "./dimension.ts";
import { dimensionText } from "./dimension-chain.ts";
import { paperBox, type View } from "./projection.ts";

const planView: View = { side: "plan", width: 0 };

/** The leaf of every door open by a right angle, and the arc that it sweeps. */
export function swingLines(swings: readonly DoorSwing[]): readonly DisplayItem[] {
  return swings.flatMap((swing) => {
    const { part, section, hinge, shut, open, radius } = swing;
    const reference = { section, part };
    const steps = 16;
    const arc: number[] = [];
    for (let step = 0; step <= steps; step++) {
      const angle = (step / steps) * (Math.PI / 2);
      arc.push(hinge.x + shut * radius * Math.cos(angle), hinge.y + open * radius * Math.sin(angle));
    }
    const thick = 40;
    const leaf = [hinge.x, hinge.y, hinge.x + shut * thick, hinge.y];
    const points = [...leaf, hinge.x + shut * thick, hinge.y + open * radius, hinge.x, hinge.y + open * radius];
    const label = `door opens ${swing.opens}, hinged ${swing.hinges}`;
    return [
      line(`${part}/arc`, swing.strikes === undefined ? "quiet" : "fail", arc, { dash: "short", reference }),
      line(`${part}/open leaf`, "outline", points, { closed: true, fill: "paper", label, reference }),
    ];
  });
}

/** Room for coils, electrical work and access as dashed boxes, named inside; coil pulls with their length. */
export function spaceLines({ spaces }: Arrangement, style: DimensionStyle): readonly DisplayItem[] {
  return spaces.flatMap((space) => {
    const [left, low, right, high] = paperBox(planView, space);
    const reference = { section: space.section, part: space.part };
    if (space.use === "access") {
      return [
        rectangle(space.key, "hairline", [left, low, right, high], { dash: "short", label: space.name, reference }),
      ];
    }
    const ink = space.use === "coil pull" ? "quiet" : "heat";
    return [
      rectangle(space.key, ink, [left, low, right, high], { dash: "long", label: space.name, reference }),
      ...spaceWords(space, [left, low, right, high], style),
    ];
  });
}

const shortWords = { "coil pull": "coil pull", "electrical working space": "electrical", access: "access" } as const;

/** The space's use: upright in the outer part of a deep space, level beyond the outer edge of a shallow one. */
function spaceWords(
  space: ServiceSpace,
  [left, low, right, high]: readonly [number, number, number, number],
  { textScale, system }: DimensionStyle,
): readonly DisplayItem[] {
  const text = `${shortWords[space.use]} ${dimensionText(space.size.y / 1000, system)}`;
  const reference = { section: space.section, part: space.part };
  const letters = textSizes.small * textScale;
  const long = textWidth(text, "small") * textScale;
  const isDeep = high - low > 2 * long;
  const middle = (left + right) / 2;
  const away = space.side === "right" ? -1 : 1;
  const outer = away < 0 ? low : high;
  const at = isDeep
    ? ([middle + 0.35 * letters, outer - away * 0.75 * long] as const)
    : ([middle, outer + (away < 0 ? -1.1 : 0.4) * letters] as const);
  return [
    words(`${space.key} words`, space.use === "coil pull" ? "quiet" : "heat", at, text, {
      size: "small",
      anchor: "middle",
      reference,
      ...(isDeep ? { turn: 90 } : {}),
    }),
  ];
}
