import { m3PerS, mm2, one } from "@chargewright/quantities";
import type { OutputDeclaration, StepDeclaration } from "../relation/declaration.ts";

export const volumetricEfficiencyOutput = {
  symbol: "eta_v",
  unit: one,
  meaning: "volumetric efficiency: delivered over swept volume, at inlet density",
} as const satisfies OutputDeclaration<"ratio">;

export const leakFlowOutput = {
  symbol: "q_L",
  unit: m3PerS,
  meaning: "volume that leaks back per time, at inlet pressure and discharge temperature",
} as const satisfies OutputDeclaration<"volumeFlow">;

/** What a measured leak says about the machine. */
export const leakOutputs = {
  leakArea: { symbol: "A_L", unit: mm2, meaning: "effective leak area of all clearances together" },
  leakCoefficient: {
    symbol: "lambda",
    unit: one,
    meaning: "leak coefficient: leak area over the two-thirds power of the displacement per revolution",
  },
} as const satisfies Readonly<Record<string, OutputDeclaration>>;

/** What `kappa` stands for wherever it is a step. */
export const kappaStep = {
  unit: "",
  meaning: "(gamma - 1)/gamma, the gas constant over the specific heat",
} as const satisfies StepDeclaration;

/** The steps of a leak that is predicted. */
export const clearanceSteps = {
  kappa: kappaStep,
  A_L: { unit: "m²", meaning: "effective leak area" },
  x: { unit: "", meaning: "pressure ratio across the clearances, no smaller than the critical one" },
} as const satisfies Readonly<Record<string, StepDeclaration>>;

/** The equations that lead from the size of a blower to the flow function of its clearances. */
export const clearanceEquations = [
  "kappa = (gamma - 1) / gamma",
  "A_L = lambda * V_rev^(2 / 3)",
  "x = max(p_1 / p_2, (2 / (gamma + 1))^(1 / kappa))",
  "psi = x^(1 / gamma) * sqrt(2 / kappa * (1 - x^kappa))",
] as const;
