export { plasticServiceLimit } from "./plastic-service-limit.ts";
export { serviceTemperatureMargin } from "./service-temperature-margin.ts";
export { woodStrengthLossTime } from "./wood-strength-loss-time.ts";
