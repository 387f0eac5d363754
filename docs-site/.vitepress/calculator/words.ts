/** A phrase with a capital at its start, where it begins with a letter. */
export function capital(phrase: string): string {
  return phrase.charAt(0).toUpperCase() + phrase.slice(1);
}

/** A meaning parted into the name it begins with and the explanation after it. */
export function headAndRest(meaning: string): { readonly head: string; readonly rest: string } {
  const at = meaning.search(/[:;,(]/);
  return at < 0
    ? { head: meaning, rest: "" }
    : { head: meaning.slice(0, at).trimEnd(), rest: ` ${meaning.slice(at)}`.replace(/^ (?=[:;,])/, "") };
}
