/** True where two values as a form reads them say the same: numbers, words, lists and groups of them. */
export function sameValues(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const keys = Object.keys(one);
  if (keys.length !== Object.keys(other).length) return false;
  const [left, right] = [one as Record<string, unknown>, other as Record<string, unknown>];
  return keys.every((key) => Object.hasOwn(right, key) && sameValues(left[key], right[key]));
}
