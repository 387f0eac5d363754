/** Writes the API pages and their part of the sidebar. */
export function writeApi(): Promise<void>;
