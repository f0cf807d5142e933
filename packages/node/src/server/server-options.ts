import type { JobFolder } from "#files/job-folder";
import type { ProfileText } from "#files/profile-folder";
import type { CatalogueText } from "#files/shipped";
import type { BookFiles } from "#files/shop-folder";

/** What the server serves, and to whom. */
export interface ServerOptions {
  readonly folder: JobFolder;
  /** Name of the job that the page opens first. */
  readonly startJob: string | undefined;
  /** Folder of the built page. */
  readonly siteFolder: string;
  /** The shop's own catalogue files, laid over the generic ones in the page. */
  readonly shopCatalogue: readonly CatalogueText[];
  /** The books that the page prices by. */
  readonly shopBooks: BookFiles;
  /** Profiles of the owners, besides the generic ones in the page. */
  readonly ownProfiles: readonly ProfileText[];
  readonly token: string;
}
