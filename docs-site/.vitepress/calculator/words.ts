/** A phrase with a capital at its start, where it begins with a letter. */
export function capital(phrase: string): string {
  return phrase.charAt(0).toUpperCase() + phrase.slice(1);
}
