export { coolerEffectiveness } from "./cooler-effectiveness.ts";
export { netDensityGain } from "./net-density-gain.ts";
export { pressureDropLimit } from "./pressure-drop-limit.ts";
