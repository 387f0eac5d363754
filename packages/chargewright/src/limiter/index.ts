export { actuatorFuelResolution } from "./actuator-fuel-resolution.ts";
export { actuatorMoveTime } from "./actuator-move-time.ts";
export { actuatorStepLength } from "./actuator-step-length.ts";
export { actuatorTravel } from "./actuator-travel.ts";
export { cutToDigits } from "./cut-to-digits.ts";
export { fallbackFuel } from "./fallback-fuel.ts";
export { homingSteps } from "./homing-steps.ts";
export {
  type ActuatorSetting,
  type FallbackBasis,
  type FallbackSetting,
  fallbackPosition,
  type LimiterSchedule,
  limiterSchedule,
} from "./limiter-schedule.ts";
export { microstepTorque } from "./microstep-torque.ts";
export {
  type FuelLimitTable,
  fuelLimitAt,
  fuelLimitTable,
  type OperatingPoint,
  type OperatingTable,
  operatingTable,
} from "./operating-table.ts";
export { type RackCalibration, type RackPoint, rackCalibration } from "./rack-calibration.ts";
export { screwForce } from "./screw-force.ts";
export { screwLoweringTorque } from "./screw-lowering-torque.ts";
export { screwRaisingTorque } from "./screw-raising-torque.ts";
export { stepperRampSpeed } from "./stepper-ramp-speed.ts";
export { stepsFromHome } from "./steps-from-home.ts";
export {
  readTableCsv,
  readTableJson,
  type TableTextOptions,
  tableC,
  tableCautions,
  tableCsv,
  tableJson,
} from "./table-text.ts";
export { type HomingMove, type WholeSteps, wholeHomingSteps, wholeSteps } from "./whole-steps.ts";
