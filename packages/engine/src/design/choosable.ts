/** Kinds of coil whose other ways to be built are solved for a liquid that is given. */
export type ChosenCoilKind = "chilled-water coil" | "hot-water coil";

/** Kinds of coil that are chosen by rating their own section for each way to build it. */
export const ratedCoilKinds = ["steam coil", "steam coil with face and bypass", "recovery coil"] as const;

/** One of them. */
export type RatedCoilKind = (typeof ratedCoilKinds)[number];

/** True for the coils on a liquid that is given. */
export function isChosenCoil(kind: string): kind is ChosenCoilKind {
  return kind === "chilled-water coil" || kind === "hot-water coil";
}

/** True for the coils on steam or of a run-around loop. */
export function isRatedCoil(kind: string): kind is RatedCoilKind {
  return (ratedCoilKinds as readonly string[]).includes(kind);
}
