import { deg, kgPerM, mm, mPerS, N, one } from "@chargewright/quantities";
import type { InputDeclaration } from "../relation/declaration.ts";

const input = <const D extends InputDeclaration>(declared: D): D => declared;

export const driverDiameter = /* @__PURE__ */ input({
  symbol: "d_1",
  unit: mm,
  meaning: "pitch diameter of the driving pulley",
  range: [20, 5000],
  example: "145 mm",
});

export const drivenDiameter = /* @__PURE__ */ input({
  symbol: "d_2",
  unit: mm,
  meaning: "pitch diameter of the driven pulley",
  range: [20, 5000],
  example: "100 mm",
});

export const beltSpeed = /* @__PURE__ */ input({
  symbol: "v",
  unit: mPerS,
  meaning: "belt speed",
  range: [0.05, 150],
  example: "21.3 m/s",
});

export const massPerLength = /* @__PURE__ */ input({
  symbol: "m",
  unit: kgPerM,
  meaning: "mass of the belt per length, all ribs together",
  range: [0, 20],
  presets: {
    "PK, 4 ribs": {
      value: 0.08,
      spread: [0.06, 0.1],
      because: "about 0.02 kg/m per rib, from memory: weigh your belt",
    },
    "PK, 6 ribs": {
      value: 0.12,
      spread: [0.09, 0.15],
      because: "about 0.02 kg/m per rib, from memory: weigh your belt",
    },
    "PK, 8 ribs": {
      value: 0.16,
      spread: [0.12, 0.2],
      because: "about 0.02 kg/m per rib, from memory: weigh your belt",
    },
  },
  example: "0.12 kg/m",
});

export const tensionRatio = /* @__PURE__ */ input({
  symbol: "k",
  unit: one,
  meaning: "ratio of the tensions that drive, tight over slack, the centrifugal part taken off both",
  range: [1.05, 10000],
  example: "4",
});

export const standingTension = /* @__PURE__ */ input({
  symbol: "T_0",
  unit: N,
  meaning: "tension of each span at standstill",
  range: [0.1, 100000],
  example: "250 ± 25 N",
});

/** Degrees of a wrap for bounds, from radians. */
export const degrees = (angle: number): number => deg.fromSi(angle);

/** The belt speed that makers of ribbed belts allow. */
export const usualBeltSpeed = {
  what: "belt speed",
  of: ({ beltSpeed: speed }: { readonly beltSpeed: number }) => speed,
  range: [1, 50],
  unit: "m/s",
  because: "a catalogue of ribbed belts ends at 50 m/s; below 1 m/s creep is no longer small (judgement)",
  source: "ribbed-belt-catalogue",
} as const;

/** Tension ratios that a ribbed drive is laid out for. */
export const usualTensionRatio = {
  what: "tension ratio",
  of: ({ tensionRatio: ratio }: { readonly tensionRatio: number }) => ratio,
  range: [1.05, 5],
  unit: "",
  because:
    "judgement: V-ribbed drives are laid out for about 4, as the ribs never wedge fully; more counts on friction that oil or wear takes away",
} as const;

export const guardCaution =
  "A running belt takes fingers, sleeves and hair: guard the drive, and stop the engine and make sure it cannot start before you touch, tension or measure there.";
export const throwCaution =
  "A belt that breaks or comes off whips: stand clear of its plane, and keep fuel and brake lines out of it.";
export const fadingCaution =
  "A slipping belt glazes, burns and loses boost without warning: watch boost after every change of ratio or pressure.";
