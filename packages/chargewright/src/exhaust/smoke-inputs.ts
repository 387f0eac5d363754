import { mm, perM } from "@chargewright/quantities";
import type { InputDeclaration } from "../relation/declaration.ts";

/** In mm. */
export const OPTICAL_LENGTH = 430;

export const opticalLength = {
  symbol: "L",
  unit: mm,
  meaning: "effective optical path length of the opacimeter",
  range: [10, 2000],
  default: {
    value: OPTICAL_LENGTH,
    because: "the usual smoke tube, as in UN Regulation 49",
    source: "un-regulation-49",
  },
  example: "430 mm",
} as const satisfies InputDeclaration<"length">;

export const absorption = {
  symbol: "k",
  unit: perM,
  meaning: "light absorption coefficient of the smoke",
  range: [0, 20],
  example: "1.0 ± 0.1 1/m",
} as const satisfies InputDeclaration<"absorptionCoefficient">;
