/** Words that people write for the same part of a unit. */
const words: Readonly<Record<string, string>> = {
  hour: "h",
  hours: "h",
  hr: "h",
  hrs: "h",
  minute: "min",
  minutes: "min",
  mins: "min",
  second: "s",
  seconds: "s",
  sec: "s",
  secs: "s",
  day: "d",
  days: "d",
  inch: "in",
  inches: "in",
  feet: "ft",
  foot: "ft",
  yard: "yd",
  yards: "yd",
  pound: "lb",
  pounds: "lb",
  lbs: "lb",
  lbm: "lb",
  ounce: "oz",
  ounces: "oz",
  grain: "gr",
  grains: "gr",
  gallon: "gal",
  gallons: "gal",
  liter: "l",
  liters: "l",
  litre: "l",
  litres: "l",
  meter: "m",
  meters: "m",
  metre: "m",
  metres: "m",
  millimeter: "mm",
  millimeters: "mm",
  millimetre: "mm",
  millimetres: "mm",
  micron: "um",
  microns: "um",
  gram: "g",
  grams: "g",
  kilogram: "kg",
  kilograms: "kg",
  pascal: "pa",
  pascals: "pa",
  watt: "w",
  watts: "w",
  kilowatt: "kw",
  kilowatts: "kw",
  newton: "n",
  newtons: "n",
  volt: "v",
  volts: "v",
  amp: "a",
  amps: "a",
  ampere: "a",
  amperes: "a",
  btus: "btu",
  tons: "ton",
  tonnes: "tonne",
  fins: "fin",
  revs: "rev",
  revolutions: "rev",
  radians: "rad",
  fahrenheit: "f",
  celsius: "c",
  kelvin: "k",
  kelvins: "k",
  rankine: "r",
  standard: "std",
  actual: "act",
  absolute: "abs",
  gage: "gauge",
  gauge: "gauge",
  sqft: "ft2",
  sqin: "in2",
  sqm: "m2",
  cuft: "ft3",
  cuin: "in3",
};

/** Words of plain characters with single spaces between; the degree sign is itself in either form. */
const isPlain = /^[!-~°]+(?: [!-~°]+)*$/;

/**
 * One plain form for the many ways of writing the same characters: typographic minus, quotes, fractions,
 * superscripts, degree signs and spaces.
 *
 * @param text text: anything typed
 * @returns text: the same in plain characters, trimmed, spaces single
 * @example plainCharacters("−40 ℉") // "-40 °F"
 * @source derived-here
 */
export function plainCharacters(text: string): string {
  // Most of what is typed is plain already.
  if (isPlain.test(text)) return text;
  return text
    .replace(/[⁰¹²³⁴-⁹⁺⁻]+/g, (run, at: number) => (/[x×*·]\s?10$/.test(text.slice(0, at)) ? `^${run}` : run))
    .replace(/[¼-¾⅐-⅞]/g, (fraction) => ` ${fraction}`)
    .replace(/[º˚]/g, "°")
    .replace(/[″”“]/g, '"')
    .replace(/[′’‘]/g, "'")
    .normalize("NFKC")
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/\u2044/g, "/")
    .replace(/[\u00b5\u03bc]/g, "u")
    .replace(/\s+/g, " ")
    .trim();
}

/**
 * The form under which a unit is looked up: lower case, words shortened, `per` as a stroke, and without the dots,
 * spaces, hyphens and brackets that people put or leave out at will.
 *
 * @param text text: a unit as typed
 * @returns text: its canonical spelling
 * @example canonicalUnit("Btu/(hr·ft²·°F)") // "btu/hft2f"
 * @source derived-here
 */
export function canonicalUnit(text: string): string {
  return plainCharacters(text)
    .toLowerCase()
    .replace(/\bper ?cent\b/g, "%")
    .replace(/\bper\b/g, "/")
    .replace(/deg(?:rees?)?\.?/g, "°")
    .replace(/\bof\b/g, " ")
    .replace(/[a-z]+/g, (word) => (Object.hasOwn(words, word) ? (words[word] ?? word) : word))
    .replace(/\b(?:sq|square)\.? ?(ft|in|m|mm|cm)\b/g, "$12")
    .replace(/\b(?:cu|cubic)\.? ?(ft|in|m)\b/g, "$13")
    .replace(/[\s.·•⋅*^()[\]_-]/g, "")
    .replace(/°(?=[fckr])/g, "");
}
