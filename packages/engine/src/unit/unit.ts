import type { Frame, SectionKind, SectionLayout } from "#section/contract";
import type { Casing } from "./casing.ts";

/** One section of a unit, ready to be rated. */
export interface UnitSection {
  /** Unique in the unit, as in the job: `cooling coil`. */
  readonly name: string;
  /** Name of its kind: `chilled-water coil`. */
  readonly kind: string;
  readonly behaviour: SectionKind;
  /** What the job says of it, defaults filled in. */
  readonly values: Readonly<Record<string, unknown>>;
  readonly design: unknown;
  readonly layout: SectionLayout;
  /** m from the cabinet's entry plane to the section's entry plane. */
  readonly start: number;
}

/** The machine: sections in airflow order inside a casing. */
export interface Unit {
  readonly frame: Frame;
  readonly casing: Casing;
  readonly sections: readonly UnitSection[];
  /** m, of the cabinet inside, without what stands outside it. */
  readonly length: number;
}
