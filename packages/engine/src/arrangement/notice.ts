/** Something about the arrangement that does not fit or should be minded: which part, where, what. */
export interface ArrangementNotice {
  readonly part: string;
  /** mm along the airflow, where it has a place. */
  readonly at: number | undefined;
  readonly what: string;
  readonly weight: "information" | "caution";
  readonly source?: string;
}

/** Corrosivity of the air by ISO 12944. */
export type CorrosionClass = "C1" | "C2" | "C3" | "C4" | "C5";
