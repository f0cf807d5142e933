import type { Blank } from "#section/part";

/** How many sheets a set of blanks takes. */
export interface Nesting {
  /** By area alone: no cutting plan needs fewer. */
  readonly least: number;
  /** By a plan of shelves that can be cut with a shear: no good plan needs more. */
  readonly shelves: number;
  /** Blanks larger than the sheet: they are joined of equal pieces that fit. */
  readonly joined: readonly Blank[];
  /** mm², of all blanks. */
  readonly area: number;
}

interface Piece {
  readonly long: number;
  readonly high: number;
  readonly count: number;
}

interface Sheet {
  used: number;
  readonly shelves: Shelf[];
}

interface Shelf {
  readonly height: number;
  used: number;
}

/**
 * Lays blanks onto sheets of `length` by `width` mm in shelves, first fit by falling height: every blank lies with its
 * longer side along the sheet. Larger blanks are cut into as many equal pieces as it takes. A stated bound, not the best
 * plan; `kerf` mm are lost beside each piece.
 */
export function nestBlanks(blanks: readonly Blank[], length: number, width: number, kerf: number): Nesting {
  const joined: Blank[] = [];
  const pieces: Piece[] = [];
  let area = 0;
  for (const blank of blanks) {
    const long = Math.max(blank.length, blank.width);
    const short = Math.min(blank.length, blank.width);
    const along = Math.ceil(long / length - 1e-9);
    const across = Math.ceil(short / width - 1e-9);
    if (along * across > 1) joined.push(blank);
    area += blank.count * long * short;
    const [one, other] = [long / along, short / across];
    pieces.push({ long: Math.max(one, other), high: Math.min(one, other), count: blank.count * along * across });
  }
  pieces.sort((a, b) => b.high - a.high || b.long - a.long);
  const sheets: Sheet[] = [];
  for (const piece of pieces) placeOn(sheets, piece, length, width, kerf);
  return { least: Math.ceil(area / (length * width) - 1e-9), shelves: sheets.length, joined, area };
}

/** Lays pieces alike, one after the other, where each first fits: where one did not, none after it does. */
function placeOn(sheets: Sheet[], piece: Piece, length: number, width: number, kerf: number): void {
  let left = piece.count;
  for (let index = 0; left > 0; index++) {
    const sheet = sheets[index] ?? { used: 0, shelves: [] };
    if (index === sheets.length) sheets.push(sheet);
    for (const shelf of sheet.shelves) {
      while (left > 0 && piece.high <= shelf.height && shelf.used + piece.long <= length) {
        shelf.used += piece.long + kerf;
        left -= 1;
      }
    }
    while (left > 0 && (sheet.used + piece.high <= width || sheet.shelves.length === 0)) {
      const shelf = { height: piece.high, used: piece.long + kerf };
      sheet.shelves.push(shelf);
      sheet.used += piece.high + kerf;
      left -= 1;
      while (left > 0 && shelf.used + piece.long <= length) {
        shelf.used += piece.long + kerf;
        left -= 1;
      }
    }
  }
}
