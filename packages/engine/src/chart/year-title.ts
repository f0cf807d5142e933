/** The title of a picture of a year; one that was made up says so. */
export function yearTitle(words: string, isSynthetic: boolean): string {
  return isSynthetic ? `${words}, synthetic year` : words;
}
