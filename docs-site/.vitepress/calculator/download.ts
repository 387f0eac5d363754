/** Gives the visitor a text as a file; it is made on the device and asks no server. */
export function download(name: string, text: string, type = "text/plain"): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = Object.assign(document.createElement("a"), { href: address, download: name });
  link.click();
  // Not at once: some browsers fetch it after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
