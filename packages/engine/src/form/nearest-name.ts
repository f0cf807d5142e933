/**
 * The known name that a mistyped one probably means, or undefined when none is near: at most a third of its letters
 * added, left out, changed or swapped.
 */
export function nearestName(typed: string, known: readonly string[]): string | undefined {
  if (typed.length > 80) return undefined;
  const given = plain(typed);
  let nearest: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const name of known) {
    const distance = editDistance(given, plain(name));
    if (distance < least && distance <= Math.max(1, Math.floor(Math.max(given.length, name.length) / 3))) {
      nearest = name;
      least = distance;
    }
  }
  return nearest;
}

/** Capitals, underscores and hyphens are no difference between names: `supplyAirflow`, `supply_airflow`. */
function plain(name: string): string {
  return name
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replace(/[\s_-]+/g, " ")
    .trim()
    .toLowerCase();
}

/** Letters added, left out, changed, or swapped with their neighbour. */
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const changed = (above[column - 1] ?? 0) + (a[row - 1] === b[column - 1] ? 0 : 1);
      let least = Math.min(changed, (above[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1);
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        least = Math.min(least, (before[column - 2] ?? 0) + 1);
      }
      current.push(least);
    }
    before = above;
    above = current;
  }
  return above[b.length] ?? 0;
}
