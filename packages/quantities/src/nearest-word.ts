const LONGEST = 32;

/**
 * The word that is nearest to a text, for a hint, or undefined if none is within two changes of a letter.
 * @param plain brings both to a common form before they are compared; capitals do not count anyway.
 */
export function nearestWord(
  text: string,
  words: readonly string[],
  plain: (word: string) => string = (word) => word,
): string | undefined {
  const key = plain(text).toLowerCase();
  if (key.length === 0 || key.length > LONGEST) return undefined;
  let best: string | undefined;
  let least = Math.min(2, Math.floor(key.length / 2)) + 1;
  for (const word of words) {
    const distance = editDistance(key, plain(word).toLowerCase());
    if (distance < least) {
      least = distance;
      best = word;
    }
  }
  return best;
}

/** How many changes of one letter, or swaps of two neighbours, turn one text into the other. */
function editDistance(from: string, to: string): number {
  if (Math.abs(from.length - to.length) > 2) return 3;
  let above = Array.from({ length: to.length + 1 }, (_, index) => index);
  let before = above;
  for (let row = 1; row <= from.length; row++) {
    const line = [row];
    for (let column = 1; column <= to.length; column++) {
      const change = from[row - 1] === to[column - 1] ? 0 : 1;
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      line.push(
        Math.min(
          (above[column] as number) + 1,
          (line[column - 1] as number) + 1,
          (above[column - 1] as number) + change,
          swapped ? (before[column - 2] as number) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    before = above;
    above = line;
  }
  return above[to.length] as number;
}
