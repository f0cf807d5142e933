import { spawn } from "node:child_process";
import { once } from "node:events";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { beforeAll, describe, expect, it, onTestFinished } from "vitest";
import { temporaryFolder } from "#files/temporary-folder.test-data";
import { bundleSources } from "../../../../tools/sources.mjs";

let main = "";
beforeAll(async () => {
  ({ main = "" } = await bundleSources("main-test", { main: "packages/node/src/cli/main.ts" }));
}, 60_000);

function start(words: readonly string[]) {
  const child = spawn(process.execPath, [main, ...words]);
  onTestFinished(() => {
    child.kill("SIGKILL");
  });
  let written = "";
  let complained = "";
  child.stdout.on("data", (piece) => {
    written += piece;
  });
  child.stderr.on("data", (piece) => {
    complained += piece;
  });
  const ended = once(child, "close").then(([code, signal]) => ({ code, signal, written, complained }));
  return { child, ended, written: () => written };
}

describe("the program as a process", { timeout: 60_000 }, () => {
  it("answers, plainly when no person looks on, and ends with 0", async () => {
    const { child, ended } = start(["air", "--csv", "-"]);
    child.stdin.end("dry bulb [°F],wet bulb [°F]\n95,78\n");
    const { code, written, complained } = await ended;
    expect(complained).toBe("");
    expect(code).toBe(0);
    expect(written).toMatch(/^ {2}2 +95\.0 +78\.0/m);
    expect(written).not.toContain("\u001b");
  });

  it("complains in one line and ends with 2", async () => {
    const { code, written, complained } = await start(["read", "/no/such/job.yaml"]).ended;
    expect({ code, written }).toEqual({ code: 2, written: "" });
    expect(complained).toBe("oncethrough: /no/such/job.yaml: there is no such file\n");
  });

  it("ends quietly when its reader has seen enough", async () => {
    const { child, ended } = start(["air", "--csv", "-", "--output", "csv"]);
    child.stdout.destroy();
    child.stdin.on("error", () => undefined);
    child.stdin.end(`dry bulb [°F],wet bulb [°F]\n${"95,78\n".repeat(20_000)}`);
    const { code, complained } = await ended;
    expect(complained).toBe("");
    expect(code).toBe(0);
  });

  it("serves until it is interrupted, then ends with 0", async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, "job.yaml"), "duty: {}\n");
    const { child, ended, written } = start(["serve", folder, "--port", "0"]);
    while (!written().includes("Ctrl-C")) await once(child.stdout, "data");
    const [, port, token] = /^http:\/\/127\.0\.0\.1:(\d+)\/#token=(\S+)$/m.exec(written()) ?? [];
    const headers = { "x-oncethrough-token": token ?? "" };
    const answer = await fetch(`http://127.0.0.1:${port}/api/job`, { headers });
    expect(await answer.json()).toMatchObject({ name: "job.yaml", text: "duty: {}\n" });
    const second = await start(["serve", folder, "--port", port ?? ""]).ended;
    expect(second).toMatchObject({ code: 2, written: "" });
    expect(second.complained).toMatch(/^oncethrough: port \d+ is taken; choose another with --port[^\n]*\n$/);
    child.kill("SIGINT");
    const { code, signal, complained } = await ended;
    expect({ code, signal }).toEqual({ code: 0, signal: null });
    // On sources alone there may be no built page; that is said and no more.
    expect(complained).toMatch(/^(the page is not built yet[^\n]*\n)?$/);
  });
});
