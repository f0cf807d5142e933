import { mkdir, readdir, readFile, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { NameProblem, openJobFolder } from "./job-folder.ts";
import { temporaryFolder } from "./temporary-folder.test-data.ts";

const posixOnly = process.platform === "win32";

async function folderWithJobs() {
  const outer = await temporaryFolder();
  const path = join(outer, "jobs");
  await mkdir(path);
  await writeFile(join(path, "north-wing.yaml"), "duty: {}\n");
  await writeFile(join(outer, "secret.yaml"), "secret: yes\n");
  const { folder } = await openJobFolder(path);
  return { outer, path, folder };
}

describe("a folder of jobs", () => {
  it("lists job files alone, by name", async () => {
    const { path, folder } = await folderWithJobs();
    await writeFile(join(path, "annex.YML"), "duty: {}\n");
    for (const name of ["note.txt", ".hidden.yaml", "north-wing.yaml.previous"]) await writeFile(join(path, name), "x");
    await mkdir(join(path, "old.yaml"));
    const jobs = await folder.list();
    expect(jobs.map((job) => job.name)).toEqual(["annex.YML", "north-wing.yaml"]);
    expect(jobs[1]?.size).toBe(9);
    expect(jobs[1]?.changed).toMatch(/^\d{4}-\d\d-\d\dT/);
  });

  it("opens by the path of a job as well", async () => {
    const { path } = await folderWithJobs();
    const opened = await openJobFolder(join(path, "north-wing.yaml"));
    expect(opened.job).toBe("north-wing.yaml");
    expect(opened.folder.path).toBe(path);
    await expect(openJobFolder(join(path, "missing"))).rejects.toThrow("no such file");
    await writeFile(join(path, "note.txt"), "x");
    await expect(openJobFolder(join(path, "note.txt"))).rejects.toThrow("ends in .yaml");
  });

  it("refuses every name that leads elsewhere", async () => {
    const { outer, folder } = await folderWithJobs();
    const names = [
      "../secret.yaml",
      "..\\secret.yaml",
      "./../secret.yaml",
      "x/../../secret.yaml",
      join(outer, "secret.yaml"),
      "C:secret.yaml",
      "secret.yaml\0.yaml",
      "..yaml/../x.yaml",
      ".yaml",
      "",
      "north-wing",
      "north-wing.yaml.previous",
      `${"a".repeat(300)}.yaml`,
    ];
    for (const name of names) {
      await expect(folder.read(name), name).rejects.toBeInstanceOf(NameProblem);
      await expect(folder.save(name, "x", undefined), name).rejects.toBeInstanceOf(NameProblem);
    }
    expect(await readFile(join(outer, "secret.yaml"), "utf8")).toBe("secret: yes\n");
  });

  it.skipIf(posixOnly)("refuses links that lead out, in reading, writing and listing", async () => {
    const { outer, path, folder } = await folderWithJobs();
    await symlink(join(outer, "secret.yaml"), join(path, "out.yaml"));
    await symlink("../secret.yaml", join(path, "relative.yaml"));
    await symlink("out.yaml", join(path, "twice.yaml"));
    await symlink(join(outer, "new.yaml"), join(path, "dangling.yaml"));
    await symlink("circle.yaml", join(path, "circle.yaml"));
    for (const name of ["out.yaml", "relative.yaml", "twice.yaml", "dangling.yaml", "circle.yaml"]) {
      await expect(folder.read(name), name).rejects.toThrow();
      await expect(folder.save(name, "x\n", undefined), name).rejects.toThrow();
    }
    expect((await folder.list()).map((job) => job.name)).toEqual(["north-wing.yaml"]);
    expect((await readdir(outer)).sort()).toEqual(["jobs", "secret.yaml"]);
    expect(await readFile(join(outer, "secret.yaml"), "utf8")).toBe("secret: yes\n");
  });

  it.skipIf(posixOnly)("writes through a link that stays inside, and the link stays a link", async () => {
    const { path, folder } = await folderWithJobs();
    await symlink("north-wing.yaml", join(path, "current.yaml"));
    const { version } = await folder.read("current.yaml");
    expect(await folder.save("current.yaml", "duty: {a: 1}\n", version)).toMatchObject({ saved: true });
    expect(await readFile(join(path, "north-wing.yaml"), "utf8")).toBe("duty: {a: 1}\n");
    expect((await folder.read("current.yaml")).text).toBe("duty: {a: 1}\n");
  });

  it("saves over the version that was read, and gives back what else stands there", async () => {
    const { path, folder } = await folderWithJobs();
    const { version } = await folder.read("north-wing.yaml");
    const first = await folder.save("north-wing.yaml", "one\n", version);
    expect(first.saved).toBe(true);
    await writeFile(join(path, "north-wing.yaml"), "by another hand\n");
    const second = await folder.save("north-wing.yaml", "two\n", first.version);
    expect(second).toMatchObject({ saved: false, text: "by another hand\n" });
    expect(await readFile(join(path, "north-wing.yaml"), "utf8")).toBe("by another hand\n");
    expect(await folder.save("north-wing.yaml", "two\n", second.version)).toMatchObject({ saved: true });
    expect(await readFile(join(path, "north-wing.yaml.previous"), "utf8")).toBe("by another hand\n");
  });

  it("lets one of two saves over the same version win, whole", async () => {
    const { path, folder } = await folderWithJobs();
    const { version } = await folder.read("north-wing.yaml");
    const outcomes = await Promise.all(
      ["a", "b", "c", "d"].map((letter) => folder.save("north-wing.yaml", letter.repeat(50_000), version)),
    );
    expect(outcomes.filter((outcome) => outcome.saved)).toHaveLength(1);
    expect(await readFile(join(path, "north-wing.yaml"), "utf8")).toBe("a".repeat(50_000));
  });

  it("makes a new file, but not over one that is there; the same text may be sent twice", async () => {
    const { folder } = await folderWithJobs();
    expect(await folder.save("new.yaml", "one\n", undefined)).toMatchObject({ saved: true });
    expect(await folder.save("new.yaml", "two\n", undefined)).toMatchObject({ saved: false, text: "one\n" });
    expect(await folder.save("new.yaml", "one\n", undefined)).toMatchObject({ saved: true });
  });

  it("tells of a file that is gone instead of quietly making it anew", async () => {
    const { folder } = await folderWithJobs();
    expect(await folder.save("gone.yaml", "one\n", "some version")).toEqual({ saved: false, version: "", text: "" });
    expect((await folder.list()).map((job) => job.name)).toEqual(["north-wing.yaml"]);
  });
});
