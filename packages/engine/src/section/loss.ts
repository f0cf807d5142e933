/** Which of a part's areas a velocity belongs to. */
export type FlowPlane =
  | "opening"
  | "approach"
  | "throat"
  | "free"
  | "core"
  | "face"
  | "gap"
  | "passage"
  | "section"
  | "bypass"
  | "jet"
  | "plenum"
  | "duct"
  | "fan inlet"
  | "fan outlet";

/** Figures between which the loss of one part lies at this flow: dry and wet fins, clean and loaded filters. */
export interface LossSpan {
  readonly of: "fins" | "filter";
  /** Pa: dry all over, or clean. */
  readonly least: number;
  /** Pa: wet all over, or at change-out. */
  readonly most: number;
  /** Where the part stands: share that is wet, or loading, 0…1. */
  readonly share: number;
}

/** One loss of total pressure, with the velocity, area and density it refers to. */
export interface Loss {
  /** What takes it, in the trade's words. */
  readonly part: string;
  /** Pa of total pressure; negative where the part adds it. */
  readonly pressure: number;
  readonly plane: FlowPlane;
  /** m², and m/s in it at `density` kg/m³. */
  readonly area: number;
  readonly velocity: number;
  readonly density: number;
  /** Bibliography key and place, or the record that says so. */
  readonly source: string;
  /** degrees from closed, of a damper's blades. */
  readonly bladeAngle?: number;
  readonly span?: LossSpan;
  /** Lies on a path beside that of the supply air (return air, the path that is not the dearer one): not in the sum. */
  readonly isBeside?: true;
  /** The fan's own pressure: what all the others are served from. */
  readonly isFan?: true;
}

/** The source of a figure that a catalogue record gives. */
export function recordSource(head: { readonly source: string; readonly name: string }): string {
  return `${head.source} record "${head.name}"`;
}
