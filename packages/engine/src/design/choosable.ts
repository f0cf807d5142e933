/** Kinds of coil whose other ways to be built can be looked for. */
export type ChosenCoilKind = "chilled-water coil" | "hot-water coil";

/** True for the kinds of coil that can be searched. */
export function isChosenCoil(kind: string): kind is ChosenCoilKind {
  return kind === "chilled-water coil" || kind === "hot-water coil";
}
