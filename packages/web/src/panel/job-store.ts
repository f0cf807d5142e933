/** Where job texts go to, as the panels use it. */
export interface JobStore {
  /** Stores the text of the job in hand. */
  readonly save: () => void;
  /** True where saving writes a file anew each time, so that it makes sense without a change. */
  readonly canSaveAgain: boolean;
}
