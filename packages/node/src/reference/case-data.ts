/** What a JSON object holds before anyone has looked at it. */
export type CaseData = Readonly<Record<string, unknown>>;

/** Whether a value is an object, neither list nor null. */
export function isCaseData(value: unknown): value is CaseData {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** The number under a key; null when there is none. */
export function numberAt(data: CaseData, key: string): number | null {
  const value = data[key];
  return typeof value === "number" && Number.isFinite(value) ? value : null;
}

/** The list under a key; empty when there is none. */
export function listAt(data: CaseData, key: string): readonly unknown[] {
  const value = data[key];
  return Array.isArray(value) ? value : [];
}

/** Whether a list holds an object with at least one of the keys. */
export function someHave(list: readonly unknown[], ...keys: readonly string[]): boolean {
  return list.some((each) => isCaseData(each) && keys.some((key) => key in each));
}

/** Says how a key fails to be a number; null when it is one. */
export function missingNumber(data: CaseData, key: string): string | null {
  if (numberAt(data, key) !== null) return null;
  const value = data[key];
  if (value === undefined || value === null) return `${key} is not given`;
  return `${key} is not a number (${shortened(JSON.stringify(value))})`;
}

/** Half-width of what a case vouches for, from `uncertainty: { key: … }` or `uncertainty_pct`, of the case or its file. */
export function uncertaintyOf(data: CaseData, meta: CaseData, key: string, expected: number): number | null {
  for (const source of [data, meta]) {
    const { uncertainty } = source;
    const own = isCaseData(uncertainty) ? numberAt(uncertainty, key) : null;
    if (own !== null) return Math.abs(own);
    const percent = numberAt(source, "uncertainty_pct");
    if (percent !== null) return Math.abs((percent / 100) * expected);
  }
  return null;
}

/** A text for a message, cut where it grows long. */
export function shortened(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
