import { mm } from "@chargewright/quantities";
import type { InputDeclaration } from "../relation/declaration.ts";

export const BACKLASH_MM = 0.1;

export const stepLength = {
  symbol: "s",
  unit: mm,
  meaning: "travel of one step",
  range: [0.0007, 2],
  example: "0.0254 mm",
} as const satisfies InputDeclaration<"length">;

export const backlash = {
  symbol: "b",
  unit: mm,
  meaning: "free play between nut and rack",
  range: [0, 2],
  default: { value: BACKLASH_MM, spread: [0.05, 0.2], because: "an ordinary nut, from memory: measure it" },
  example: "0.1 mm",
} as const satisfies InputDeclaration<"length">;
