import type { Condition } from "#duty/condition";
import type { Air } from "#section/air";
import type { Note, Operation, SectionRating, Shortfall } from "#section/contract";
import type { DeclaredComparison } from "#section/declared";

/** The unit solved at one condition. Owned by the caller, filled in place; numbers in SI. */
export interface UnitRating {
  condition: Condition;
  readonly operation: Operation;
  /** Outdoor air as it enters the first section. */
  readonly outdoors: Air;
  /** In airflow order, one for each section of the unit. */
  readonly sections: readonly SectionRating[];
  /** Air behind each section, after its leakage: what enters the next one. */
  readonly between: readonly Air[];
  /** kg/s of dry air that leaks into the stream after each section; negative outwards. */
  readonly leakage: Float64Array;
  /** kg/s of meltwater at 0 °C that drains behind each section where a leak thaws carried ice; almost always 0. */
  readonly drained: Float64Array;
  /** Air at the end of the unit, after the last section's leakage. */
  readonly supply: Air;
  /** m³/s at the density of the supply, and as standard air. */
  supplyActualAirflow: number;
  supplyStandardAirflow: number;
  /** Dry-air share that came through the intake, 0…1. */
  outsideAirShare: number;
  /** Pa that the duct system needs at this flow, and what the unit holds there. */
  externalStaticNeeded: number;
  externalStaticHeld: number;
  /** W, fan motors from the mains. */
  fanElectricPower: number;
  /** True when every balance is met; otherwise `reason` says which is not and why. */
  solved: boolean;
  reason: string;
  /** Walks along the unit that were needed. */
  walks: number;
}

/** A plane of the airway at which state and pressure are known. */
export interface Station {
  /** Name of the section that ends here, or `outdoors`. */
  readonly after: string;
  /** m from the cabinet's entry plane; negative before it. */
  readonly position: number;
  readonly air: Air;
  /** m/s, gross, in the clear cabinet. */
  readonly velocity: number;
  /** Pa of the compartment against its surroundings. */
  readonly wallPressure: number;
}

/** A shortfall, and the section where it arises; `unit` for the unit as a whole. */
export interface PlacedShortfall extends Shortfall {
  readonly section: string;
}

/** A declared rating beside ours, and the section that it is of. */
export interface PlacedDeclared extends DeclaredComparison {
  readonly section: string;
}

/** A note, and the section where it arises. */
export interface PlacedNote extends Note {
  readonly section: string;
}
