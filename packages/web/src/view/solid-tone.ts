import type { Solid } from "@oncethrough/engine/drawing/solids";

/** What a solid's face is toned with: a role of the page, and how much of it on paper. */
export interface Tone {
  readonly role: "ink" | "water" | "steam" | "heat" | "air" | "choice";
  readonly share: number;
}

const byKind: Partial<Record<Solid["kind"], Tone>> = {
  fins: { role: "water", share: 0.3 },
  tubes: { role: "steam", share: 0.3 },
  header: { role: "steam", share: 0.42 },
  pipe: { role: "steam", share: 0.42 },
  filter: { role: "air", share: 0.16 },
  pan: { role: "water", share: 0.2 },
  wheel: { role: "ink", share: 0.28 },
  housing: { role: "ink", share: 0.13 },
  motor: { role: "ink", share: 0.42 },
  drive: { role: "ink", share: 0.34 },
  shaft: { role: "ink", share: 0.3 },
  bearing: { role: "ink", share: 0.42 },
  spring: { role: "ink", share: 0.3 },
  flexible: { role: "ink", share: 0.5 },
  actuator: { role: "ink", share: 0.45 },
  light: { role: "heat", share: 0.16 },
  window: { role: "water", share: 0.35 },
  blades: { role: "air", share: 0.3 },
  rail: { role: "ink", share: 0.36 },
  frame: { role: "air", share: 0.34 },
  roof: { role: "air", share: 0.12 },
  lug: { role: "ink", share: 0.5 },
  trap: { role: "water", share: 0.45 },
};

const plain: Tone = { role: "air", share: 0.07 };

/** The tone of a solid by what it is; sheet and panels are paper. */
export function toneOf({ kind }: Solid): Tone {
  return byKind[kind] ?? plain;
}
