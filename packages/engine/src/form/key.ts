/** The words under which a field stands in a text: `supplyAirflow` is written `supply airflow`. */
export function textKey(name: string): string {
  return name.replace(/[A-Z]/g, (letter, at: number) => `${at === 0 ? "" : " "}${letter.toLowerCase()}`);
}

/** The field's name of words in a text: the way back of `textKey`. */
export function fieldName(key: string): string {
  return key.replace(/ ([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
