// What holds the car back.

export { roadLoad } from "./road-load.ts";
export { roadLoadFromCoefficients } from "./road-load-from-coefficients.ts";

// Measured by coasting down.

export { coastDownTime } from "./coast-down-time.ts";
export { coastDownTwoSpeeds } from "./coast-down-two-speeds.ts";
export { type CoastDown, type FittedRoadLoad, fitCoastDown } from "./fit-coast-down.ts";

// In another air.

export { dragToReferenceAir } from "./drag-to-reference-air.ts";

// Gearing.

export { tyreCircumference } from "./tyre-circumference.ts";

// From it the speed.

export { speedFromEngineSpeed } from "./speed-from-engine-speed.ts";

// What a cruise burns.

export { cruiseFuel } from "./cruise-fuel.ts";

// And what boost adds.

export { boostFuelCost } from "./boost-fuel-cost.ts";

// And how quick it is.

export { accelerationTime } from "./acceleration-time.ts";
