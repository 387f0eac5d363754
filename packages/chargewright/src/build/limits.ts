import { fromSi, one, type Quantity } from "@chargewright/quantities";
import { beltSlipMargin } from "../drive/belt-slip-margin.ts";
import { beltSpeed } from "../drive/belt-speed.ts";
import type { SiAirState } from "./air-state.ts";
import type { Burning } from "./burning.ts";
import type { SiCondition } from "./condition.ts";
import type { Build } from "./description.ts";
import { inSi } from "./in-si.ts";

/** A bound of a build at an operating point. */
export interface Limit {
  readonly what:
    | "blower speed"
    | "blower discharge temperature"
    | "belt slip"
    | "smoke"
    | "exhaust temperature"
    | "engine speed";
  readonly value: Quantity;
  readonly limit: Quantity;
  /** Limit over value, temperatures from absolute zero; below 1 the limit is passed. */
  readonly margin: Quantity<"ratio">;
  readonly passed: boolean;
  /** What to do, where it is passed. */
  readonly remedy: string;
}

/** The bounds of a build at an operating point, the weakest first. */
export function limitsOf(build: Build, condition: SiCondition, state: SiAirState, burning: Burning): readonly Limit[] {
  const { blower, belt, engine } = build;
  const limits: Limit[] = [
    limit(
      "engine speed",
      fromSi(condition.engineSpeed, engine.governedSpeed.unit),
      engine.governedSpeed,
      "keep the governor's speed",
    ),
  ];
  if (blower !== undefined) {
    const speed = fromSi(blower.driveRatio.si * condition.engineSpeed, blower.greatestSpeed.unit);
    const ratio = (blower.greatestSpeed.si / engine.governedSpeed.si).toPrecision(3);
    limits.push(
      limit("blower speed", speed, blower.greatestSpeed, `a drive ratio of ${ratio} keeps it at the governed speed`),
    );
    const hot = fromSi(state.blowerOut.temperature, blower.greatestDischargeTemperature.unit);
    limits.push(
      limit(
        "blower discharge temperature",
        hot,
        blower.greatestDischargeTemperature,
        "less boost, or more speed at the same boost, runs cooler",
      ),
    );
    if (belt !== undefined && state.shaftPower > 1) {
      const { driverPitchDiameter, ...laid } = inSi(belt);
      const { beltSpeed: speedOfBelt } = beltSpeed.si({
        pitchDiameter: driverPitchDiameter,
        pulleySpeed: condition.engineSpeed,
        massPerLength: laid.massPerLength,
      });
      const { capacity, margin, leastTension } = beltSlipMargin.si({
        ...laid,
        beltSpeed: speedOfBelt,
        power: state.shaftPower,
      });
      const unit = beltSlipMargin.inputs.power.unit;
      limits.push({
        what: "belt slip",
        value: fromSi(state.shaftPower, unit),
        limit: fromSi(Math.max(capacity, 0), unit),
        margin: fromSi(Math.max(margin, 0), one),
        passed: !(margin >= 1),
        remedy: `a standing tension of ${leastTension.toFixed(0)} N in each span holds`,
      });
    }
  }
  const { smokeMargin } = burning;
  limits.push({
    what: "smoke",
    value: burning.airFuelRatio,
    limit: fromSi(burning.airFuelRatio.si / smokeMargin.si, one),
    margin: smokeMargin,
    passed: smokeMargin.si < 1 - 1e-9,
    remedy: "less fuel, or denser air",
  });
  if (engine.exhaustLimit !== undefined)
    limits.push(
      limit(
        "exhaust temperature",
        burning.cautiousExhaustTemperature,
        engine.exhaustLimit,
        "less fuel, more air or a cooler charge",
      ),
    );
  return limits.sort((a, b) => a.margin.si - b.margin.si);
}

function limit(what: Limit["what"], value: Quantity, bound: Quantity, remedy: string): Limit {
  return {
    what,
    value,
    limit: bound,
    margin: fromSi(bound.si / value.si, one),
    passed: value.si > bound.si * (1 + 1e-9),
    remedy,
  };
}
