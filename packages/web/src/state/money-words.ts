const symbols: Readonly<Record<string, string>> = { USD: "$", EUR: "€", GBP: "£" };

/** An amount for a person to read, to the cent: `$12,345.67`. */
export function moneyText(cents: number, currency: string): string {
  const amount = Math.abs(cents);
  const whole = Math.trunc(amount / 100).toLocaleString("en-US");
  return `${cents < 0 ? "−" : ""}${before(currency)}${whole}.${String(amount % 100).padStart(2, "0")}`;
}

/** An amount to the nearest whole unit of the currency, halves upwards: `$12,346`. */
export function roundMoneyText(cents: number, currency: string): string {
  const whole = Math.floor(Math.abs(cents) / 100 + 0.5);
  return `${cents < 0 && whole > 0 ? "−" : ""}${before(currency)}${whole.toLocaleString("en-US")}`;
}

/** A difference with its sign before it, `+` or `−`; what is nothing has none. */
export function signedText(value: number, words: (size: number) => string): string {
  const size = words(Math.abs(value));
  if (!/[1-9]/.test(size)) return size;
  return `${value < 0 ? "−" : "+"}${size}`;
}

function before(currency: string): string {
  return symbols[currency] ?? `${currency} `;
}
