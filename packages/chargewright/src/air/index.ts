export { airDensity } from "./air-density.ts";
