export { smokeLimitedFuel } from "./smoke-limited-fuel.ts";
