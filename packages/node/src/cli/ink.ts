/** Roles of text on a terminal. Without colour every role is the plain text: nothing is said by colour alone. */
export interface TextInk {
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly fail: (text: string) => string;
  readonly accent: (text: string) => string;
}

function painter(begin: number, end: number): (text: string) => string {
  return (text) => (text === "" ? text : `\u001b[${begin}m${text}\u001b[${end}m`);
}

const plain = (text: string) => text;

/** The roles in colour, or plain. */
export function textInk(colour: boolean): TextInk {
  if (!colour) return { strong: plain, quiet: plain, fail: plain, accent: plain };
  return { strong: painter(1, 22), quiet: painter(2, 22), fail: painter(31, 39), accent: painter(36, 39) };
}

const unbreakable = "\u00a0";

/** Stands between the figures of a line; a line does not begin with it. */
export const separator = `${unbreakable}· `;

/** A figure and its unit, so that `wrapped` does not part them. */
export function glued(text: string): string {
  return text.replaceAll(" ", unbreakable);
}

/** Text broken into lines of at most `width` characters, between words; lines after the first are moved in. */
export function wrapped(text: string, width: number, hanging = ""): string {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/[ \t\n]+/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (longer.length > width && line.trim() !== "") {
      lines.push(line);
      line = `${hanging}${word}`;
    } else {
      line = longer;
    }
  }
  lines.push(line);
  return lines.join("\n").replaceAll(unbreakable, " ");
}
