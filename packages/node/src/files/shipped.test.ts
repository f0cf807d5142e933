import { existsSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readCatalogueFolder, shippedFolders } from "./shipped.ts";
import { temporaryFolder } from "./temporary-folder.test-data.ts";

describe("what comes with the program", () => {
  it("lies where the package says", () => {
    expect(existsSync(shippedFolders.catalogue)).toBe(true);
    expect(existsSync(shippedFolders.examples)).toBe(true);
  });

  it("reads catalogue files by name and says when there are none", async () => {
    const folder = await temporaryFolder();
    await expect(readCatalogueFolder(folder)).rejects.toThrow("holds no catalogue file");
    await writeFile(join(folder, "motor.yaml"), "family: motor\n");
    await writeFile(join(folder, "belt.yml"), "family: belt\n");
    await writeFile(join(folder, "readme.txt"), "not a record\n");
    expect(await readCatalogueFolder(folder)).toEqual([
      { path: "belt.yml", text: "family: belt\n" },
      { path: "motor.yaml", text: "family: motor\n" },
    ]);
    await expect(readCatalogueFolder(join(folder, "missing"))).rejects.toThrow("there is no such folder");
    await expect(readCatalogueFolder(join(folder, "motor.yaml"))).rejects.toThrow("it is a file, not a folder");
  });
});
