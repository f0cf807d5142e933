import { writeTextFile } from "./write-text.ts";

/** A program to be killed: saves ever new whole texts to the path it is given. */
const path = process.argv[2] ?? "";
process.stdout.write("saving\n");
for (let turn = 0; ; turn++) {
  await writeTextFile(path, String.fromCharCode(97 + (turn % 26)).repeat(300_000));
}
