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
    const piece = { long: Math.max(one, other), high: Math.min(one, other) };
    for (let index = 0; index < blank.count * along * across; index++) pieces.push(piece);
  }
  pieces.sort((a, b) => b.high - a.high || b.long - a.long);
  const sheets: Sheet[] = [];
  for (const piece of pieces) placeOn(sheets, piece, length, width, kerf);
  return { least: Math.ceil(area / (length * width) - 1e-9), shelves: sheets.length, joined, area };
}

function placeOn(sheets: Sheet[], piece: Piece, length: number, width: number, kerf: number): void {
  for (const sheet of sheets) {
    const shelf = sheet.shelves.find((each) => each.used + piece.long <= length && piece.high <= each.height);
    if (shelf !== undefined) {
      shelf.used += piece.long + kerf;
      return;
    }
    if (sheet.used + piece.high <= width) {
      sheet.shelves.push({ height: piece.high, used: piece.long + kerf });
      sheet.used += piece.high + kerf;
      return;
    }
  }
  sheets.push({ used: piece.high + kerf, shelves: [{ height: piece.high, used: piece.long + kerf }] });
}
