/** Where job texts come from and go to, as the panels use it. */
export interface JobStore {
  /** Lets the person choose a job. */
  readonly open: () => void;
  /** Lets the person begin a unit from its duty. */
  readonly begin: () => void;
  /** Stores the text of the job in hand. */
  readonly save: () => void;
  /** True where saving writes a file anew each time, so that it makes sense without a change. */
  readonly canSaveAgain: boolean;
}
