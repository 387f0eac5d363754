/** Puts a state behind the address without a step in the history. */
export function setFragment(text: string): void {
  try {
    history.replaceState(history.state, "", text === "" ? location.pathname + location.search : `#${text}`);
  } catch {
    // Browsers refuse when it comes too often; the next edit will carry this one with it.
  }
}
