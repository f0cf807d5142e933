import { spawn } from "node:child_process";
import { once } from "node:events";
import { chmod, mkdir, readdir, readFile, stat, utimes, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { bundleSources } from "../../../../tools/sources.mjs";
import { temporaryFolder } from "./temporary-folder.test-data.ts";
import { writeTextFile } from "./write-text.ts";

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
    const { program = "" } = await bundleSources("save-test", {
      program: "packages/node/src/files/save-for-ever.test-data.ts",
    });
    for (let round = 0; round < 10; round++) {
      const child = spawn(process.execPath, [program, path], { stdio: ["ignore", "pipe", "inherit"] });
      await once(child.stdout, "data");
      await new Promise((resolve) => setTimeout(resolve, round * 7));
      child.kill("SIGKILL");
      await once(child, "exit");
      for (const name of [path, `${path}.previous`]) {
        const text = await readFile(name, "utf8");
        expect(text.length).toBe(300_000);
        expect(text).toBe(whole(text.charAt(0)));
      }
      expect(await readFile(path, "utf8"), "the child saved before it was killed").not.toBe(whole("a"));
      await writeTextFile(path, whole("a"));
    }
  });
});
