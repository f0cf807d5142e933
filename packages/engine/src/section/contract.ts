import type { Condition } from "#duty/condition";
import type { Fields, GroupCheck, ValuesOf } from "#form/field";
import type { QuantityKind } from "#quantity/kind";
import type { Air } from "./air.ts";
import type { DeclaredComparison } from "./declared.ts";
import type { DisplayItem } from "./display.ts";
import type { Loss } from "./loss.ts";
import type { SectionParts } from "./part.ts";

/** The clear space that the cabinet gives its sections. */
export interface Frame {
  /** m, clear inside, across the flow. */
  readonly width: number;
  /** m, clear inside, floor to ceiling. */
  readonly height: number;
  /** Side on which pipes and doors are, seen in airflow. */
  readonly hand: "left" | "right";
}

/**
 * What the unit sets while it looks for the balance: the only figures that travel up the line, and they do so
 * through the unit alone.
 */
export interface Operation {
  /** rev/s of the wheel; 0 when the fan stands still. */
  fanSpeed: number;
  fansRunning: boolean;
  /** Fans of an array that stand while the others run; none when left out. */
  fansFailed?: number;
  /** kg/s of dry air that the mixing box draws from the return opening. */
  returnDryAirFlow: number;
  /** What the outside and return dampers do now. */
  dampers: "as set" | "closed";
  /** End stop at which an actuated return damper stands, because no angle holds the share wanted. */
  returnDamperStop: "none" | "open" | "closed";
  /** °C wanted after the cooling coil, after allowing for fan heat; undefined: no cooling wanted. */
  coolingLeaving: number | undefined;
  /** °C wanted after the heating coil; undefined: no heating wanted. */
  heatingLeaving: number | undefined;
  /** kg/kg wanted after the humidifier; undefined: no humidification. */
  humidifierLeaving: number | undefined;
}

/** What a section may know besides the air that enters it. */
export interface SectionCondition {
  readonly condition: Condition;
  readonly operation: Operation;
}

/** What every kind reports; kinds add their own figures. Flat, owned by the caller, filled in place. */
export interface SectionRating {
  /** State and pressure at the entry and the exit plane. */
  readonly entering: Air;
  readonly leaving: Air;
  /** Pa of total pressure lost; negative where a fan adds it. */
  totalPressureLoss: number;
  /** W of heat given to the air (sensible and by fan work), without what water carries. */
  heatToAir: number;
  /** kg/s of water added to the air stream as vapour or free liquid; negative where it drains away. */
  waterToAir: number;
  /** W of enthalpy that this water carries into the stream. */
  waterEnthalpyToAir: number;
  /** m/s, gross, at the plane that matters for the kind. */
  faceVelocity: number;
}

/** One figure of a rating as it is shown: name, quantity. */
export interface FigureLine<Rating> {
  readonly figure: keyof Rating & string;
  readonly name: string;
  readonly quantity: QuantityKind | "count" | "factor";
}

/** The arithmetic behind a figure, as data: evaluated from the record, it gives the very number of the rating. */
export interface WorkingLine<Design, Rating> {
  readonly figure: keyof Rating & string;
  readonly name: string;
  readonly quantity: QuantityKind | "count" | "factor";
  /** The equation in the symbols of `terms`. */
  readonly equation: string;
  readonly terms: readonly {
    readonly symbol: string;
    readonly name: string;
    readonly quantity: QuantityKind | "count" | "factor";
    readonly value: (rating: Rating, design: Design) => number;
  }[];
  readonly evaluate: (rating: Rating, design: Design) => number;
  /** Bibliography key and place. */
  readonly source: string;
}

/** Figures side by side behind a rating: a line for each row of a coil, each published correlation, … */
export interface WorkingTable {
  readonly name: string;
  readonly columns: readonly { readonly name: string; readonly quantity: TableQuantity }[];
  readonly lines: readonly (readonly (number | string)[])[];
  /** What the columns follow, in their symbols. */
  readonly equations: readonly string[];
  /** Bibliography key and place. */
  readonly source: string;
}

/** What a column of a table holds. */
export type TableQuantity = QuantityKind | "count" | "factor" | "words";

/** A set point or limit of the section's own that is not held, and by how much. */
export interface Shortfall {
  readonly what: string;
  readonly quantity: QuantityKind;
  readonly wanted: number;
  readonly got: number;
}

/** Something to mind about a rating: a method out of its range, a state that the practitioner should see. */
export interface Note {
  readonly what: string;
  readonly weight: "information" | "caution";
  readonly source?: string;
}

/** What the section takes of the cabinet's length, and where it opens. */
export interface SectionLayout {
  /** m along the airflow, clear. */
  readonly length: number;
  /** m, where the section stands outside the cabinet (a hood); 0 otherwise. */
  readonly outside: number;
  /** Where air of another path comes in or goes out: return air on top, supply through the floor, … */
  readonly openings?: readonly Opening[];
  /** It blows through a wall across the cabinet: where a section follows, the wall's thickness is added to its length. */
  readonly wallBehind?: boolean;
}

/** An opening of the cabinet in the section. */
export interface Opening {
  readonly air: "outside" | "return" | "supply";
  readonly face: "entry" | "exit" | "top" | "bottom";
  /** How the hood before an intake is open. */
  readonly hood?: "facing down" | "facing out";
  /** m: from the section's entry plane along the airflow on top and bottom, from the floor up on entry and exit. */
  readonly from: number;
  readonly to: number;
}

/** What a section does to sound that passes it. Lists are of the octave bands 63 … 8000 Hz. */
export interface SectionSound {
  /** dB that sound loses on its way through, with the airflow and against it. */
  readonly downstream: readonly number[];
  readonly upstream: readonly number[];
  /** Left out where the section makes none, or none that could be told. */
  readonly made?: MadeSound;
  /** m/s on the face of a part whose own flow noise no open method tells: it is not among `made`. */
  readonly uncounted?: number;
  /** dB that is lost besides by what leaves through the return opening, where the section has one. */
  readonly toReturn?: readonly number[];
  /** m² of the opening to outdoors, where the section is one. */
  readonly openingArea?: number;
  /** Bibliography key and place. */
  readonly source: string;
  readonly certainty: "published" | "from memory" | "entered";
}

/** Sound that a section makes itself, dB re 1 pW. Lists are of the octave bands 63 … 8000 Hz. */
export interface MadeSound {
  /** Sent with the airflow, and against it. */
  readonly downstream: readonly number[];
  readonly upstream: readonly number[];
  /** Sent through the return opening, where the section has one. */
  readonly toReturn?: readonly number[];
  /** What the section's own walls hear of it. */
  readonly inside: readonly number[];
  /** Hz of a tone in it, such as that of passing blades. */
  readonly tone?: number;
  /** dB either way in a band. */
  readonly uncertainty: number;
  /** Bibliography key and place. */
  readonly source: string;
  /** What the figures rest on. */
  readonly certainty: string;
}

/** The cabinet as sound meets it. */
export interface SoundRoom {
  readonly frame: Frame;
  /** Absorption of the walls' inside in the octave bands. */
  readonly absorption: readonly number[];
}

/** One thing about how a bought part is to be built: measured, or told. */
export type BuildLine =
  | { readonly name: string; readonly quantity: QuantityKind | "count" | "factor"; readonly value: number }
  | { readonly name: string; readonly text: string };

/**
 * A kind of section. `prepare` turns what a person wrote into a design (geometry, areas, records looked up once);
 * `rate` is one-way and pure: it reads design, air and condition and fills `out`.
 */
export interface SectionKind<
  Name extends string = string,
  F extends Fields = Fields,
  Design = unknown,
  Rating extends SectionRating = SectionRating,
> {
  readonly name: Name;
  /** What the unit needs to know the section for; most kinds have no role. */
  readonly role?: SectionRole;
  /** One sentence in the trade's words. */
  readonly meaning: string;
  readonly fields: F;
  readonly check?: GroupCheck;
  /** @throws SectionProblem when the parts cannot be built or do not fit the frame. */
  readonly prepare: (values: ValuesOf<F>, frame: Frame) => Design;
  readonly createRating: () => Rating;
  readonly rate: (design: Design, air: Air, condition: SectionCondition, out: Rating) => void;
  /**
   * Adds to a rating the figures on which neither its leaving air nor another section depends, right after `rate`: the unit
   * asks for them once, when it has come to rest. Left out where `rate` tells all.
   */
  readonly complete?: (design: Design, condition: SectionCondition, out: Rating) => void;
  readonly layout: (design: Design, frame: Frame) => SectionLayout;
  /** Elevation inside `layout.length` × frame.height, millimetres, x in airflow from the entry plane, y up from the floor. */
  readonly picture: (design: Design, frame: Frame, name: string) => readonly DisplayItem[];
  /** What the section is built of, in its own millimetres, with masses; left out, nothing but its casing. */
  readonly parts?: (design: Design, frame: Frame) => SectionParts;
  /** Pa of the section's compartment against its surroundings, where it is not the leaving stream's static pressure. */
  readonly wallPressure?: (rating: Rating) => number;
  /** What the section does to sound that passes it, and makes itself; left out, all sound passes and none is made. */
  readonly sound?: (design: Design, rating: Rating, room: SoundRoom) => SectionSound;
  /** Every loss of total pressure in airflow order; those not beside the path add up to `totalPressureLoss`. */
  readonly losses?: (design: Design, rating: Rating) => readonly Loss[];
  readonly figures: readonly FigureLine<Rating>[];
  /** Figures by which what is bought for it is ordered, at the condition where the first of them is greatest. */
  readonly orderBy?: readonly (keyof Rating & string)[];
  /** How what is bought for it is to be built. */
  readonly orderBuild?: (design: Design) => readonly BuildLine[];
  readonly working: readonly WorkingLine<Design, Rating>[];
  /** Tables behind the figures, made on demand. */
  readonly workingTables?: (design: Design, rating: Rating, condition: SectionCondition) => readonly WorkingTable[];
  readonly shortfalls?: (design: Design, rating: Rating, condition: SectionCondition) => readonly Shortfall[];
  readonly notes?: (design: Design, rating: Rating, condition: SectionCondition) => readonly Note[];
  /** A supplier's declared rating beside ours, where the job holds one for the section. */
  readonly declared?: (design: Design, rating: Rating, condition: SectionCondition) => DeclaredComparison | undefined;
}

/** Roles that the unit acts on: it balances the mixing box and the fan, and sets the coils and the humidifier. */
export type SectionRole = "mixing" | "heating" | "cooling" | "humidifying" | "fan";

/** What a section with the role `mixing` reports besides, so that the unit can find the return flow. */
export interface MixingRating extends SectionRating {
  /** kg/s of dry air drawn from the return opening, and what comes with it. */
  returnDryAirFlow: number;
  returnWaterFlow: number;
  returnEnthalpyFlow: number;
  /** Pa that the return path has to spare against the plenum; zero when the flows agree with the dampers. */
  returnImbalance: number;
}

/** What a section with the role `fan` reports besides. */
export interface FanRating extends SectionRating {
  /** W from the mains, all fans of the section. */
  electricPower: number;
  /** Pa that each fan adds, and of it static pressure and the velocity pressure in its outlet (0 for wheels without one). */
  fanTotalPressure: number;
  staticPressure: number;
  outletVelocityPressure: number;
  /** rev/s that it may turn at most here, as its class, its speed control and its motor let it. */
  speedAllowed: number;
}

/** The parts of a section cannot be built as asked: says which field, what, and what would do. */
export class SectionProblem extends Error {
  readonly field: string;
  readonly allowed: string;
  constructor(field: string, problem: string, allowed: string) {
    super(problem);
    this.name = "SectionProblem";
    this.field = field;
    this.allowed = allowed;
  }
}

/** Checks the types of a kind and gives it back as it is. */
export function defineKind<Name extends string, F extends Fields, Design, Rating extends SectionRating>(
  kind: SectionKind<Name, F, Design, Rating>,
): SectionKind<Name, F, Design, Rating> {
  return kind;
}
