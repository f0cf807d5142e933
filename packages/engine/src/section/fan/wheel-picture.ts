import type { Pencil } from "../pencil.ts";

/** Stations along an airfoil's chord, and half its thickness there over the chord. */
const stations = [0, 0.03, 0.1, 0.22, 0.4, 0.6, 0.8, 1];
const half = stations.map(
  (x) => 0.72 * (0.2969 * Math.sqrt(x) - 0.126 * x - 0.3516 * x ** 2 + 0.2843 * x ** 3 - 0.1036 * x ** 4),
);

/**
 * Backward-inclined airfoil blades of a wheel that turns clockwise, seen along its shaft: from `inner` to `outer` radius
 * the blade falls back against the rotation.
 */
export function drawBlades(
  pencil: Pencil,
  centre: { readonly x: number; readonly y: number },
  outer: number,
  inner: number,
  count: number,
): void {
  const lag = 0.62;
  for (let blade = 0; blade < count; blade++) {
    const angle = (2 * Math.PI * blade) / count;
    const root = { x: inner * Math.cos(angle), y: inner * Math.sin(angle) };
    const tip = { x: outer * Math.cos(angle + lag), y: outer * Math.sin(angle + lag) };
    pencil.line("blades", "fine", airfoil(centre, root, tip), { closed: true, fill: "paper" });
  }
}

/** Outline of a slightly cambered airfoil from root (leading edge) to tip, bulging outwards. */
function airfoil(
  centre: { readonly x: number; readonly y: number },
  root: { readonly x: number; readonly y: number },
  tip: { readonly x: number; readonly y: number },
): number[] {
  const chord = { x: tip.x - root.x, y: tip.y - root.y };
  const at = (along: number, aside: number) => [
    centre.x + root.x + along * chord.x + aside * chord.y,
    centre.y + root.y + along * chord.y - aside * chord.x,
  ];
  const camber = (x: number) => 0.14 * 4 * x * (1 - x) * 0.5;
  const upper = stations.map((x, index) => at(x, camber(x) + half[index]!));
  const lower = stations.map((x, index) => at(x, camber(x) - half[index]!)).reverse();
  return [...upper, ...lower.slice(1, -1)].flat();
}
