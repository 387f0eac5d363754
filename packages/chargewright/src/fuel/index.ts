export { airFuelRatio } from "./air-fuel-ratio.ts";
export { fuelFlowFromEconomy } from "./fuel-flow-from-economy.ts";
