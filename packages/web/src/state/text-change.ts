/** A change of a text at one place; it can be undone without knowing the text around it. */
export interface TextChange {
  readonly from: number;
  readonly removed: string;
  readonly inserted: string;
}

/** The smallest single change that turns one text into the other; undefined when they are the same. */
export function changeBetween(before: string, after: string): TextChange | undefined {
  if (before === after) return undefined;
  const shorter = Math.min(before.length, after.length);
  let head = 0;
  while (head < shorter && before.charCodeAt(head) === after.charCodeAt(head)) head += 1;
  let tail = 0;
  while (
    tail < shorter - head &&
    before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail)
  ) {
    tail += 1;
  }
  return {
    from: head,
    removed: before.slice(head, before.length - tail),
    inserted: after.slice(head, after.length - tail),
  };
}

/**
 * The text after a change.
 *
 * @throws RangeError when the text does not hold what the change removes: it was made for another text
 */
export function applied(text: string, change: TextChange): string {
  const end = change.from + change.removed.length;
  if (text.slice(change.from, end) !== change.removed) throw new RangeError("the change was made for another text");
  return text.slice(0, change.from) + change.inserted + text.slice(end);
}

/** The change that takes a change back. */
export function inverted(change: TextChange): TextChange {
  return { from: change.from, removed: change.inserted, inserted: change.removed };
}
