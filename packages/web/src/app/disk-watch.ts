import { isDirty } from "#state/bench-state";
import type { BenchStore } from "#state/bench-store";
import { servedFile } from "./job-desk.ts";
import type { JobServer } from "./job-server.ts";

/** ms between looks at the disk while the page is seen. */
const pause = 60_000;

/**
 * Notices that another hand has changed the file: looks when the page is turned to again, and once a minute while it is
 * seen. A clean bench takes the new text as a step that can be undone; unsaved text stays, and the person is told.
 */
export function watchDisk(store: BenchStore, server: JobServer, page: Window): void {
  let told: string | undefined;
  let isLooking = false;
  const look = async () => {
    const { file } = store.getState();
    if (file.origin !== "server" || file.version === undefined || page.document.hidden || isLooking) return;
    isLooking = true;
    const job = await server.job(file.name).catch(() => undefined);
    isLooking = false;
    const now = store.getState();
    // A save or another file may have come in between.
    if (job === undefined || now.file !== file || job.version === file.version || job.version === told) return;
    told = job.version;
    if (!isDirty(now)) now.actions.takeFromDisk(servedFile(job));
    else {
      const text = `${file.name} has changed on the disk; saving will ask which text stays`;
      now.actions.notice({ text, weight: "caution" });
    }
  };
  page.addEventListener("focus", () => void look());
  page.document.addEventListener("visibilitychange", () => void look());
  page.setInterval(() => void look(), pause);
}
