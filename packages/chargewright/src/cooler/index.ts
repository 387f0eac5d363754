// biome-ignore-all assist/source/organizeImports: the order a builder needs them in is the order they are listed in
// Measured on the car.
export { coolerEffectiveness } from "./cooler-effectiveness.ts";
export { coolerEffectivenessBothSides } from "./cooler-effectiveness-both-sides.ts";
export { coolerHeatBalance } from "./cooler-heat-balance.ts";
export { coolerHeatRejected } from "./cooler-heat-rejected.ts";
export { netDensityGain } from "./net-density-gain.ts";
export { pressureDropLimit } from "./pressure-drop-limit.ts";
export { pressureDropLimitForBoost } from "./pressure-drop-limit-for-boost.ts";
// Air through the core.
export { coreFaceFlow } from "./core-face-flow.ts";
export { coolingAirNeeded } from "./cooling-air-needed.ts";
// From one test to another day.
export { coolerOutletTemperature } from "./cooler-outlet-temperature.ts";
export { coolerConductanceFromTest } from "./cooler-conductance-from-test.ts";
export { coolerConductanceAtFlows } from "./cooler-conductance-at-flows.ts";
export { coolerOutletForecast } from "./cooler-outlet-forecast.ts";
export { coreEffectiveness } from "./core-effectiveness.ts";
export { coolerTransferUnits } from "./cooler-transfer-units.ts";
// Effectiveness and transfer units, by arrangement.
export { crossflowUnmixedEffectiveness } from "./crossflow-unmixed-effectiveness.ts";
export { crossflowUnmixedTransferUnits } from "./crossflow-unmixed-transfer-units.ts";
export { crossflowUnmixedApproximateEffectiveness } from "./crossflow-unmixed-approximate-effectiveness.ts";
export { crossflowUnmixedApproximateTransferUnits } from "./crossflow-unmixed-approximate-transfer-units.ts";
export { crossflowMaxMixedEffectiveness } from "./crossflow-max-mixed-effectiveness.ts";
export { crossflowMaxMixedTransferUnits } from "./crossflow-max-mixed-transfer-units.ts";
export { crossflowMinMixedEffectiveness } from "./crossflow-min-mixed-effectiveness.ts";
export { crossflowMinMixedTransferUnits } from "./crossflow-min-mixed-transfer-units.ts";
export { counterflowEffectiveness } from "./counterflow-effectiveness.ts";
export { counterflowTransferUnits } from "./counterflow-transfer-units.ts";
export { parallelFlowEffectiveness } from "./parallel-flow-effectiveness.ts";
export { parallelFlowTransferUnits } from "./parallel-flow-transfer-units.ts";
// Pressure at another flow.
export { coreMeanDensity } from "./core-mean-density.ts";
export { corePressureDrop } from "./core-pressure-drop.ts";
export { corePressureDropExponent } from "./core-pressure-drop-exponent.ts";
// Heat soak, and what stands behind.
export { coreHeatStore } from "./core-heat-store.ts";
export { coreHeatSoakTime } from "./core-heat-soak-time.ts";
export { radiatorExtraLoad } from "./radiator-extra-load.ts";
