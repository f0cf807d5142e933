import { writeTextFile } from "./write-text.ts";

/** A program to be killed: saves ever new whole texts to the path it is given, and says so each time. */
const path = process.argv[2] ?? "";
for (let turn = 0; ; turn++) {
  await writeTextFile(path, String.fromCharCode(98 + (turn % 25)).repeat(300_000));
  process.stdout.write("saved\n");
}
