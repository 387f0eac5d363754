// Browsers take some milliseconds for it, and refuse when it comes too often.
const PAUSE = 150;
let waiting: ReturnType<typeof setTimeout> | undefined;

/** Puts a state behind the address, without a step in the history, once edits pause. */
export function setFragment(text: string): void {
  const { pathname } = location;
  clearTimeout(waiting);
  waiting = setTimeout(() => {
    // Whoever has gone on to another page takes no state along.
    if (location.pathname !== pathname) return;
    try {
      history.replaceState(history.state, "", text === "" ? location.pathname + location.search : `#${text}`);
    } catch {
      // Refused all the same; the next edit will carry this one with it.
    }
  }, PAUSE);
}
