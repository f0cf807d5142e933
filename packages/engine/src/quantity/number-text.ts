/** A number at the start of a text, and what follows it. */
export interface LeadingNumber {
  readonly value: number;
  readonly rest: string;
}

const sign = "([+-]?) ?";
const whole = "\\d{1,3}(?:,\\d{3})+|\\d{1,3}(?: \\d{3})+(?![\\d/])|\\d+";
const mixed = new RegExp(`^${sign}(\\d+)(?: |-| - )(\\d+)/(\\d+)`);
const fraction = new RegExp(`^${sign}(\\d+)/(\\d+)`);
const decimal = new RegExp(
  `^${sign}((?:${whole})?)((?:\\.\\d*)?)((?:[eE][+-]?\\d+|\\s?[x×*·]\\s?10(?:\\^[+-]?|[+-])\\d+)?)`,
);

/**
 * Reads a number from the start of a text of plain characters: decimals, thousands separated by commas or spaces,
 * exponents, fractions `5/8` and whole numbers with fractions `3-1/2`.
 *
 * @param text text: plain characters, trimmed
 * @returns record: the number and the rest of the text, or undefined when the text does not begin with a number
 * @outside a fraction over zero gives Infinity; too large an exponent gives Infinity
 * @example leadingNumber("3-1/2 in").value // 3.5
 * @source derived-here
 */
export function leadingNumber(text: string): LeadingNumber | undefined {
  const found = readMixed(text) ?? readFraction(text) ?? readDecimal(text);
  return found === undefined ? undefined : { value: found.value, rest: text.slice(found.length).trim() };
}

interface Found {
  readonly value: number;
  readonly length: number;
}

function readMixed(text: string): Found | undefined {
  const match = mixed.exec(text);
  if (match === null) return undefined;
  const value = Number(match[2]) + Number(match[3]) / Number(match[4]);
  return { value: match[1] === "-" ? -value : value, length: match[0].length };
}

function readFraction(text: string): Found | undefined {
  const match = fraction.exec(text);
  if (match === null) return undefined;
  const value = Number(match[2]) / Number(match[3]);
  return { value: match[1] === "-" ? -value : value, length: match[0].length };
}

function readDecimal(text: string): Found | undefined {
  const match = decimal.exec(text);
  if (match === null) return undefined;
  const [all, minus, digits = "", point = "", power = ""] = match;
  if (digits === "" && point.length < 2) return undefined;
  const exponent = power.replace(/^\s?[x×*·]\s?10\^?/, "e");
  const value = Number(`${digits.replace(/[ ,]/g, "") || "0"}${point === "." ? "" : point}${exponent}`);
  return { value: minus === "-" ? -value : value, length: all.length };
}
