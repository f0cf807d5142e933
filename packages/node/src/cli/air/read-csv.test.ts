import fastCheck from "fast-check";
import { describe, expect, it } from "vitest";
import { csvLine, readCsv } from "./read-csv.ts";

function cellsOf(text: string): readonly (readonly string[])[] {
  const csv = readCsv(text);
  if (!csv.ok) throw new Error(csv.problem);
  return csv.rows.map((row) => row.cells);
}

describe("CSV", () => {
  // The examples of RFC 4180, section 2.
  it("reads the forms that RFC 4180 shows", () => {
    const plain = [
      ["aaa", "bbb", "ccc"],
      ["zzz", "yyy", "xxx"],
    ];
    expect(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")).toEqual(plain);
    expect(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx")).toEqual(plain);
    expect(cellsOf('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')).toEqual(plain);
    expect(cellsOf('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([["aaa", "b\r\nbb", "ccc"], plain[1]]);
    expect(cellsOf('"aaa","b""bb","ccc"')).toEqual([["aaa", 'b"bb', "ccc"]]);
  });

  it("finds semicolons and tabs, drops the byte order mark and blank lines", () => {
    expect(cellsOf("\uFEFFa;b\n1,5;2\n\n;\n3;4\n")).toEqual([
      ["a", "b"],
      ["1,5", "2"],
      ["3", "4"],
    ]);
    expect(cellsOf("a\tb, c\n1\t2\n")).toEqual([
      ["a", "b, c"],
      ["1", "2"],
    ]);
    expect(cellsOf("")).toEqual([]);
    expect(cellsOf("a,,b,\n")).toEqual([["a", "", "b", ""]]);
  });

  it("knows the line of the file on which a row begins", () => {
    const csv = readCsv('a,b\n\n"1\n2",3\n4,5\n');
    expect(csv.ok && csv.rows.map((row) => row.line)).toEqual([1, 3, 5]);
  });

  it("says where a quote is wrong", () => {
    expect(readCsv('a,b\n1,"open\n')).toMatchObject({ ok: false, line: 2 });
    expect(readCsv('a,b\n1,2\n3,"x"y\n')).toMatchObject({ ok: false, line: 3 });
    expect(readCsv('a,b\n1,12 1/2" pipe\n')).toMatchObject({ ok: false, line: 2 });
  });

  it("reads back what it writes", () => {
    const cell = fastCheck.stringMatching(/^[a-z0-9 ",;\n\t°]*$/).map((text) => text.trim());
    fastCheck.assert(
      fastCheck.property(
        fastCheck.array(fastCheck.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1 }),
        (rows) => {
          const filled = rows.map((row) => ["first", ...row]);
          // A first line of commas alone settles the separator.
          expect(cellsOf(`a,b,c,d,e,f,g,h,i\n${filled.map(csvLine).join("")}`).slice(1)).toEqual(filled);
        },
      ),
    );
  });
});
