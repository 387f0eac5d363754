// Property tests draw the same values in every run, so that a failure is a change and not a chance; SEED=<number> draws
// others.
import fc from "fast-check";

export const seed = Number(process.env.SEED ?? 2026);

fc.configureGlobal({ seed });
