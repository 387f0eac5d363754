export { smokeLimitedFuel } from "./smoke-limited-fuel.ts";
export { exhaustTemperature } from "./exhaust-temperature.ts";
