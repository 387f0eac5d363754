import { gPerS, litre, mgPerL, one, rpm } from "@chargewright/quantities";
import type { InputDeclaration } from "../relation/declaration.ts";
import { relation } from "../relation/relation.ts";

export const REVOLUTIONS_PER_CYCLE = 2;

export const fuelMassFlow = {
  symbol: "q_f",
  unit: gPerS,
  meaning: "fuel mass per time at full load",
  range: [0.001, 1000],
  example: "1.5 ± 0.05 g/s",
} as const satisfies InputDeclaration<"massFlow">;

export const displacement = {
  symbol: "V_d",
  unit: litre,
  meaning: "displacement of all cylinders together",
  range: [0.02, 100],
  example: "1120 cc",
} as const satisfies InputDeclaration<"volume">;

export const engineSpeed = {
  symbol: "n",
  unit: rpm,
  meaning: "engine speed",
  range: [50, 15000],
  example: "2800 ± 25 rpm",
} as const satisfies InputDeclaration<"rotationalSpeed">;

export const chargePressureRatio = {
  symbol: "r",
  unit: one,
  meaning: "absolute pressure behind the blower over that before it; 1 without a charger",
  range: [1, 5],
  presets: { "naturally aspirated": { value: 1, because: "no charger" } },
  example: "1.585 ± 0.012",
} as const satisfies InputDeclaration<"ratio">;

export const revolutionsPerCycle = {
  symbol: "z",
  unit: one,
  meaning: "crankshaft revolutions per working cycle",
  range: [1, 2],
  default: { value: REVOLUTIONS_PER_CYCLE, because: "four-stroke, as nearly all small diesels are" },
  presets: {
    "four-stroke": { value: 2, because: "one working cycle in two revolutions" },
    "two-stroke": { value: 1, because: "one working cycle in each revolution" },
  },
  example: "four-stroke",
} as const satisfies InputDeclaration<"ratio">;

/** Corrected fuel per cycle in the range where the standard states a line, not a constant. */
export const fuelOnTheLine = {
  what: "corrected fuel per cycle and litre",
  of: (si: {
    readonly fuelMassFlow: number;
    readonly displacement: number;
    readonly engineSpeed: number;
    readonly chargePressureRatio: number;
    readonly revolutionsPerCycle: number;
  }) => (1000 * si.revolutionsPerCycle * si.fuelMassFlow) / (si.displacement * si.engineSpeed * si.chargePressureRatio),
  range: [15, 90],
  unit: "mg/L",
  because: "judgement: full-load fuelling of diesels lies within; outside it check the units",
} as const;

/**
 * Engine factor of the power correction: how much an engine's power follows the air.
 *
 * An engine that is given little fuel for its air hardly notices the weather, one near its smoke limit follows it. The
 * standard measures that by the fuel per cycle and litre of displacement, over the pressure ratio of the charger. A
 * service manual has the line begin at 37.2 mg instead of 40.
 *
 * @param args `fuelMassFlow`, 0.001 to 1000 g/s; `displacement`, 0.02 to 100 L; `engineSpeed`, 50 to 15 000 rpm;
 *   `chargePressureRatio`, absolute, 1 to 5, or "naturally aspirated"; optional `revolutionsPerCycle`, 2 ("four-stroke")
 *   or 1 ("two-stroke").
 * @returns `engineFactor`, 0.3 to 1.2; `correctedFuel`, per cycle and litre, over the pressure ratio; `fuelPerCycle`, the
 *   same before that.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see UN Regulation No. 85, Annex 5, 5.4.2.2.
 */
export const engineFactor = /* @__PURE__ */ relation({
  id: "engine-factor",
  title: "Engine factor of the power correction",
  subject: "air",
  summary:
    "How strongly this engine's power follows the air, by how much fuel it burns per litre and cycle. Needed before a measured power is corrected.",
  inputs: { fuelMassFlow, displacement, engineSpeed, chargePressureRatio, revolutionsPerCycle },
  outputs: {
    engineFactor: { symbol: "f_m", unit: one, meaning: "engine factor" },
    correctedFuel: { symbol: "q_c", unit: mgPerL, meaning: "fuel per cycle and litre over the pressure ratio" },
    fuelPerCycle: { symbol: "q", unit: mgPerL, meaning: "fuel per cycle and litre of displacement" },
  },
  equations: ["q = z * q_f / (V_d * n)", "q_c = q / r", "f_m = min(1.2, max(0.3, 36 * q_c - 1.14))"],
  sources: ["un-regulation-85", "r85-quotations", "mathur-sharma-testing"],
  assumes: ["Full load at that speed, steady."],
  valid: [fuelOnTheLine],
  cautions: [],
  compute: ({
    fuelMassFlow,
    displacement,
    engineSpeed,
    chargePressureRatio,
    revolutionsPerCycle = REVOLUTIONS_PER_CYCLE,
  }) => {
    const fuelPerCycle = (revolutionsPerCycle * fuelMassFlow) / (displacement * engineSpeed);
    const correctedFuel = fuelPerCycle / chargePressureRatio;
    return { engineFactor: Math.min(1.2, Math.max(0.3, 36 * correctedFuel - 1.14)), correctedFuel, fuelPerCycle };
  },
});
