// Identities of the fuel-limit actuator: what must hold whatever the numbers are.
import {
  type AnyRelation,
  actuatorFuelResolution,
  actuatorMoveTime,
  actuatorStepLength,
  actuatorTravel,
  fallbackFuel,
  homingSteps,
  microstepTorque,
  screwForce,
  screwLoweringTorque,
  screwRaisingTorque,
  stepperRampSpeed,
  stepsFromHome,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, siOf, validArguments } from "../support/random-inputs.ts";

type Si<R extends { readonly si: (si: never) => unknown }> = { readonly [N in keyof Parameters<R["si"]>[0]]-?: number };

/** Checks an identity over random valid inputs in SI, all of them given. */
function always<R extends AnyRelation>(relation: R, identity: (si: Si<R>) => void): void {
  fc.assert(
    fc.property(validArguments(relation), (args) => {
      identity(siOf(args) as Si<R>);
    }),
  );
}

const near = (a: number, b: number, relative = 1e-9) => expect(agree(a, b, relative), `${a} against ${b}`).toBe(true);

describe("actuator-step-length and actuator-travel", () => {
  test("all steps of a turn make the lead", () => {
    always(actuatorStepLength, (si) => {
      const { fullStep, microstep, stepsPerLead } = actuatorStepLength.si(si);
      near(actuatorTravel.si({ steps: si.stepsPerRevolution, stepLength: fullStep }).travel, si.lead, 1e-14);
      near(actuatorTravel.si({ steps: stepsPerLead, stepLength: microstep }).travel, si.lead, 1e-14);
    });
  });

  test("m microsteps make a full step", () => {
    always(actuatorStepLength, (si) => {
      const { fullStep, microstep } = actuatorStepLength.si(si);
      near(microstep * si.microsteps, fullStep, 1e-14);
    });
  });

  test("x(N_1 + N_2) = x(N_1) + x(N_2)", () => {
    always(actuatorTravel, ({ steps, stepLength }) => {
      const travel = (n: number) => actuatorTravel.si({ steps: n, stepLength }).travel;
      near(travel(steps) + travel(17), travel(steps + 17), 1e-12);
    });
  });
});

describe("actuator-fuel-resolution", () => {
  test("steps over the rack span make the fuel span", () => {
    always(actuatorFuelResolution, (si) => {
      const { fuelPerStep } = actuatorFuelResolution.si(si);
      near((fuelPerStep * si.rackSpan) / si.stepLength, si.fuelSpan, 1e-12);
    });
  });

  test("without step error and backlash nothing is out; more of either is worse", () => {
    always(actuatorFuelResolution, (si) => {
      expect(actuatorFuelResolution.si({ ...si, stepError: 0, backlash: 0 }).fuelError).toBe(0);
      const { fuelError, share, positionError } = actuatorFuelResolution.si(si);
      expect(actuatorFuelResolution.si({ ...si, backlash: si.backlash + 1e-4 }).fuelError).toBeGreaterThan(fuelError);
      near(share * si.fullLoadFuel, fuelError, 1e-12);
      near(positionError * (si.fuelSpan / si.rackSpan), fuelError, 1e-12);
    });
  });
});

describe("steps-from-home", () => {
  test("N s = x - x_h, and home itself is no step", () => {
    always(stepsFromHome, (si) => {
      const { steps, distance } = stepsFromHome.si(si);
      near(steps * si.stepLength, distance, 1e-14);
      expect(stepsFromHome.si({ ...si, position: si.homePosition }).steps).toBe(0);
    });
  });

  test("N steps of travel come back as N steps", () => {
    always(actuatorTravel, (si) => {
      const { travel } = actuatorTravel.si(si);
      near(stepsFromHome.si({ position: travel, stepLength: si.stepLength }).steps, si.steps, 1e-14);
    });
  });
});

describe("homing-steps", () => {
  test("reaches the stop from any position, backlash included, with one electrical cycle to spare", () => {
    always(homingSteps, (si) => {
      const { homingSteps: steps } = homingSteps.si(si);
      for (const part of [0, 0.3, 1])
        expect((steps - si.cycleSteps) * si.stepLength * (1 + 1e-9)).toBeGreaterThanOrEqual(
          part * si.travel + si.backlash,
        );
    });
  });

  test("steps less overtravel go from stop to stop, and time is steps over speed", () => {
    always(homingSteps, (si) => {
      const { homingSteps: steps, overtravel, time } = homingSteps.si(si);
      near((steps - overtravel) * si.stepLength, si.travel, 1e-6);
      near(time * si.homingSpeed, steps, 1e-12);
      expect(overtravel).toBeGreaterThanOrEqual(si.cycleSteps);
    });
  });

  test("enough even when the margin's share of steps is lost on the way", () => {
    always(homingSteps, (si) => {
      const kept = homingSteps.si(si).homingSteps / (1 + si.margin);
      expect(kept * si.stepLength * (1 + 1e-9)).toBeGreaterThanOrEqual(si.travel + si.backlash);
    });
  });
});

describe("stepper-ramp-speed", () => {
  test("v_i = sqrt(v_(i-1)^2 + 2 a): the recursion gives the closed form", () => {
    let speed = 0;
    for (let i = 1; i <= 1000; i++) {
      speed = Math.sqrt(speed * speed + 2 * 2000);
      near(stepperRampSpeed.si({ steps: i, acceleration: 2000 }).speed, speed, 1e-12);
    }
  });

  test("f = f_0 + a t and N = (f + f_0) t/2", () => {
    always(stepperRampSpeed, (si) => {
      const { speed, time } = stepperRampSpeed.si(si);
      near(si.startSpeed + si.acceleration * time, speed, 1e-10);
      near(((speed + si.startSpeed) * time) / 2, si.steps, 1e-12);
    });
  });
});

describe("actuator-move-time", () => {
  test("the area under the speed is the number of steps", () => {
    always(actuatorMoveTime, (si) => {
      const { time, peakSpeed, rampSteps } = actuatorMoveTime.si(si);
      const start = Math.min(si.startSpeed, si.topSpeed);
      const ramp = (peakSpeed - start) / si.acceleration;
      const area = (peakSpeed + start) * ramp + peakSpeed * (time - 2 * ramp);
      expect(Math.abs(area - si.steps)).toBeLessThan(1e-9 * (si.steps + peakSpeed * time));
      expect(2 * rampSteps).toBeLessThanOrEqual(si.steps * (1 + 1e-12));
    });
  });

  test("each ramp is that of stepper-ramp-speed", () => {
    always(actuatorMoveTime, (si) => {
      const { peakSpeed, rampSteps } = actuatorMoveTime.si(si);
      if (rampSteps > 1e-6)
        near(
          stepperRampSpeed.si({ steps: rampSteps, acceleration: si.acceleration, startSpeed: si.startSpeed }).speed,
          peakSpeed,
          1e-9,
        );
    });
  });

  test("never quicker than all steps at top speed; a higher top speed or acceleration never slower", () => {
    always(actuatorMoveTime, (si) => {
      const { time } = actuatorMoveTime.si(si);
      expect(time).toBeGreaterThanOrEqual((si.steps / si.topSpeed) * (1 - 1e-12));
      expect(actuatorMoveTime.si({ ...si, topSpeed: 1.5 * si.topSpeed }).time).toBeLessThanOrEqual(time * (1 + 1e-12));
      expect(actuatorMoveTime.si({ ...si, acceleration: 2 * si.acceleration }).time).toBeLessThanOrEqual(
        time * (1 + 1e-12),
      );
    });
  });

  test("the triangle and the trapezium meet where the top speed is just reached", () => {
    const at = (topSpeed: number) => actuatorMoveTime.si({ steps: 80, topSpeed, acceleration: 2000 }).time;
    near(at(400 - 1e-9), at(400 + 1e-9), 1e-9);
    near(at(400), 0.4, 1e-12);
  });
});

describe("microstep-torque", () => {
  test("one microstep per step is the whole holding torque; without friction nothing is dead", () => {
    always(microstepTorque, (si) => {
      near(microstepTorque.si({ ...si, microsteps: 1 }).firstStepTorque, si.holdingTorque, 1e-15);
      expect(microstepTorque.si({ ...si, frictionTorque: 0 }).deadMicrosteps).toBe(0);
    });
  });

  test("after the dead microsteps the torque is the friction", () => {
    always(microstepTorque, (si) => {
      const { deadMicrosteps } = microstepTorque.si(si);
      near(si.holdingTorque * Math.sin((deadMicrosteps * Math.PI) / (2 * si.microsteps)), si.frictionTorque, 1e-9);
    });
  });

  test("sin^2 + cos^2 = 1: the complementary column of the table", () => {
    for (const [n, cosine] of [
      [2, Math.SQRT1_2],
      [4, 0.92388],
      [8, 0.980785],
      [256, 0.999981],
    ] as const) {
      const { share } = microstepTorque.si({ microsteps: n, holdingTorque: 1, frictionTorque: 0 });
      expect(Math.sqrt(1 - share * share)).toBeCloseTo(cosine, 6);
    }
  });
});

describe("screws", () => {
  test("F(T(F)) = F", () => {
    always(screwRaisingTorque, (si) => {
      const { torque } = screwRaisingTorque.si(si);
      near(screwForce.si({ ...si, torque }).force, si.force, 1e-14);
    });
  });

  test("torque in proportion to force", () => {
    always(screwForce, (si) =>
      near(screwForce.si({ ...si, torque: 3 * si.torque }).force, 3 * screwForce.si(si).force, 1e-14),
    );
    always(screwLoweringTorque, (si) =>
      near(screwLoweringTorque.si({ ...si, force: 3 * si.force }).torque, 3 * screwLoweringTorque.si(si).torque, 1e-14),
    );
  });

  test("a screw that locks by its thread has an efficiency of 50 % at most", () => {
    always(screwRaisingTorque, (si) => {
      const { efficiency, lockingRatio } = screwRaisingTorque.si({ ...si, collarDiameter: 0 });
      if (lockingRatio >= 1) expect(efficiency).toBeLessThanOrEqual(0.5);
      expect(efficiency).toBeLessThan(1);
    });
  });

  test("eta = tan(lambda) (1 - f' tan(lambda))/(tan(lambda) + f') without a collar, f' = f/cos(alpha)", () => {
    always(screwRaisingTorque, (si) => {
      const tangent = si.lead / (Math.PI * si.meanDiameter);
      const friction = si.friction / Math.cos(si.flankAngle);
      near(
        screwRaisingTorque.si({ ...si, collarDiameter: 0 }).efficiency,
        (tangent * (1 - friction * tangent)) / (tangent + friction),
        1e-11,
      );
    });
  });

  test("T = F d/2 tan(phi + lambda) up and F d/2 tan(phi - lambda) down, for a square thread", () => {
    const si = {
      force: 6400,
      meanDiameter: 0.03,
      lead: 0.004,
      friction: 0.08,
      flankAngle: 0,
      collarDiameter: 0,
      collarFriction: 0,
    };
    const lambda = Math.atan(si.lead / (Math.PI * si.meanDiameter));
    const phi = Math.atan(si.friction);
    near(screwRaisingTorque.si(si).torque, 6400 * 0.015 * Math.tan(phi + lambda), 1e-12);
    near(screwLoweringTorque.si(si).torque, 6400 * 0.015 * Math.tan(phi - lambda), 1e-12);
  });

  test("raising takes more than lowering; both tell the same locking ratio", () => {
    always(screwLoweringTorque, (si) => {
      if (!(si.friction * si.lead <= 0.9 * Math.PI * si.meanDiameter * Math.cos(si.flankAngle))) return;
      const down = screwLoweringTorque.si(si);
      const up = screwRaisingTorque.si(si);
      expect(up.torque).toBeGreaterThan(down.torque);
      near(up.lockingRatio, down.lockingRatio, 1e-12);
      near(up.lockingRatio * up.frictionToLock, si.friction, 1e-12);
    });
  });
});

describe("fallback-fuel", () => {
  test("never above the naturally aspirated setting", () => {
    always(fallbackFuel, (si) => {
      const { fuel, share } = fallbackFuel.si(si);
      expect(fuel).toBeLessThanOrEqual(si.naturallyAspiratedFuel);
      expect(fuel).toBeGreaterThan(0);
      near(fuel / si.naturallyAspiratedFuel, share, 1e-14);
    });
  });

  test("denser air than at the setting gives no more, thinner gives less in proportion", () => {
    always(fallbackFuel, (si) => {
      const at = (airShare: number) => fallbackFuel.si({ ...si, airShare }).fuel;
      expect(at(1.4)).toBe(at(1));
      near(at(0.5), 0.5 * at(1), 1e-14);
    });
  });
});
