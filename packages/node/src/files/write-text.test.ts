import { spawn } from "node:child_process";
import { once } from "node:events";
import { chmod, mkdir, readdir, readFile, stat, utimes, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "./temporary-folder.test-data.ts";
import { writeTextFile } from "./write-text.ts";

const typeScriptLoader = ["--import", new URL("../../../../tools/typescript-loader.mjs", import.meta.url).href];

describe("writing a text file", () => {
  it("writes, keeps the version before, and leaves nothing else behind", async () => {
    const folder = await temporaryFolder();
    const path = join(folder, "job.yaml");
    await writeTextFile(path, "one\n");
    expect(await readdir(folder)).toEqual(["job.yaml"]);
    await writeTextFile(path, "two\n");
    await writeTextFile(path, "three\n");
    expect(await readFile(path, "utf8")).toBe("three\n");
    expect(await readFile(`${path}.previous`, "utf8")).toBe("two\n");
    expect((await readdir(folder)).sort()).toEqual(["job.yaml", "job.yaml.previous"]);
  });

  it.skipIf(process.platform === "win32")("keeps the permissions of the file", async () => {
    const path = join(await temporaryFolder(), "job.yaml");
    await writeFile(path, "one\n");
    await chmod(path, 0o640);
    await writeTextFile(path, "two\n");
    expect((await stat(path)).mode & 0o777).toBe(0o640);
  });

  it("removes what a program that died long ago left, and spares what another is just writing", async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, ".job.yaml.000000000000.tmp"), "half");
    await writeFile(join(folder, ".job.yaml.111111111111.tmp"), "being written");
    await utimes(join(folder, ".job.yaml.000000000000.tmp"), new Date(0), new Date(0));
    await writeTextFile(join(folder, "job.yaml"), "one\n");
    expect((await readdir(folder)).sort()).toEqual([".job.yaml.111111111111.tmp", "job.yaml"]);
  });

  it("says in one line why it cannot, and leaves the old text", async () => {
    const folder = await temporaryFolder();
    await mkdir(join(folder, "job.yaml"));
    await expect(writeTextFile(join(folder, "job.yaml"), "one\n")).rejects.toThrow(/job\.yaml: /);
    await expect(writeTextFile(join(folder, "missing", "job.yaml"), "one\n")).rejects.toThrow("no such");
  });

  it("loses nothing when the program is killed in the middle of a save", { timeout: 60_000 }, async () => {
    const folder = await temporaryFolder();
    const path = join(folder, "job.yaml");
    const whole = (letter: string) => letter.repeat(300_000);
    await writeTextFile(path, whole("a"));
    const program = fileURLToPath(new URL("./save-for-ever.test-data.ts", import.meta.url));
    let changed = 0;
    for (let round = 0; round < 4; round++) {
      const before = await readFile(path, "utf8");
      const child = spawn(process.execPath, [...typeScriptLoader, program, path], {
        stdio: ["ignore", "pipe", "inherit"],
      });
      await once(child.stdout, "data");
      await new Promise((resolve) => setTimeout(resolve, 5 + round * 13));
      child.kill("SIGKILL");
      await once(child, "exit");
      const after = await readFile(path, "utf8");
      expect(after.length).toBe(300_000);
      expect(after).toBe(whole(after.charAt(0)));
      const previous = await readFile(`${path}.previous`, "utf8").catch(() => after);
      expect(previous).toBe(whole(previous.charAt(0)));
      if (after !== before) changed += 1;
    }
    expect(changed, "the child really saved between the kills").toBeGreaterThan(0);
  });
});
