import { mkdtemp, realpath, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

/** An empty folder that goes when the test ends. */
export async function temporaryFolder(): Promise<string> {
  const folder = await realpath(await mkdtemp(join(tmpdir(), "oncethrough-test-")));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}
