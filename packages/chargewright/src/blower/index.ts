export { blowerFlow } from "./blower-flow.ts";
export { blowerDischargeTemperature } from "./blower-discharge-temperature.ts";
