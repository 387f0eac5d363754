import type { ConstantDeclaration } from "../relation/declaration.ts";
import { R_DRY_AIR } from "./constants.ts";

/** The standard atmosphere below 11 km. */
export const STANDARD = {
  pressure: 101325,
  temperature: 288.15,
  lapse: 0.0065,
  gravity: 9.80665,
  earthRadius: 6356766,
} as const;

/** Power of the temperature ratio that gives the pressure ratio in the standard atmosphere. */
export const PRESSURE_EXPONENT = STANDARD.gravity / (R_DRY_AIR * STANDARD.lapse);

const standardConstant = <const C extends Omit<ConstantDeclaration, "source">>(declared: C) =>
  ({ ...declared, source: "icao-doc-7488" }) as const;

export const standardPressure = /* @__PURE__ */ standardConstant({
  value: STANDARD.pressure,
  unit: "Pa",
  meaning: "standard pressure at sea level",
});

export const standardTemperature = /* @__PURE__ */ standardConstant({
  value: STANDARD.temperature,
  unit: "K",
  meaning: "standard temperature at sea level",
});

export const standardLapse = /* @__PURE__ */ standardConstant({
  value: STANDARD.lapse,
  unit: "K/m",
  meaning: "fall of the standard temperature with height",
});

export const standardGravity = /* @__PURE__ */ standardConstant({
  value: STANDARD.gravity,
  unit: "m/s²",
  meaning: "standard acceleration of free fall",
});

export const earthRadius = /* @__PURE__ */ standardConstant({
  value: STANDARD.earthRadius,
  unit: "m",
  meaning: "radius of the earth that the standard atmosphere takes",
});
