// What must hold of the road relations whatever the numbers.
import type { Quantity } from "@chargewright/quantities";
import {
  type AnyRelation,
  accelerationTime,
  boostFuelCost,
  coastDownTime,
  coastDownTwoSpeeds,
  cruiseFuel,
  dragToReferenceAir,
  roadLoad,
  roadLoadFromCoefficients,
  speedFromEngineSpeed,
  tyreCircumference,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, siOf, validArguments } from "../support/random-inputs.ts";

type Numbers = Readonly<Record<string, number>>;

/** Runs an identity over random valid inputs in SI. */
function holds(relation: AnyRelation, identity: (si: Numbers, run: (change?: Numbers) => Numbers) => void): void {
  fc.assert(
    fc.property(validArguments(relation), (args: Record<string, Quantity>) => {
      const si = siOf(args);
      identity(si, (change = {}) => relation.si({ ...si, ...change }) as Numbers);
    }),
    { numRuns: 300 },
  );
}

const same = (a: number | undefined, b: number | undefined, relative = 1e-12) =>
  expect(agree(a as number, b as number, relative), `${a} against ${b}`).toBe(true);
const of = (si: Numbers, name: string) => si[name] as number;

describe("road load", () => {
  test("rolling(2 m) = 2 rolling(m), grade(2 m) = 2 grade(m), drag(2 m) = drag(m)", () =>
    holds(roadLoad, (si, run) => {
      const [once, twice] = [run(), run({ mass: 2 * of(si, "mass") })];
      same(twice.rollingForce, 2 * (once.rollingForce as number));
      same(twice.gradeForce, 2 * (once.gradeForce as number));
      same(twice.dragForce, once.dragForce);
    }));

  test("in still air drag(2 v) = 4 drag(v)", () =>
    holds(roadLoad, (si, run) => {
      const still = run({ headWind: 0 });
      same(run({ headWind: 0, speed: 2 * of(si, "speed") }).dragForce, 4 * (still.dragForce as number));
    }));

  test("grade force² + (weight on the wheels)² = weight²", () =>
    holds(roadLoad, (si, run) => {
      const { gradeForce } = run();
      const { rollingForce } = run({ rollingCoefficient: 1 });
      same(Math.hypot(gradeForce as number, rollingForce as number), of(si, "mass") * 9.80665);
    }));

  test("a head wind w at v drags as still air at v + w", () =>
    holds(roadLoad, (si, run) => {
      fc.pre(of(si, "speed") + of(si, "headWind") > 0.1);
      same(run({ speed: of(si, "speed") + of(si, "headWind"), headWind: 0 }).dragForce, run().dragForce);
    }));

  test("level and without wind it is A + C v² with A = C_rr m g and C = rho A_d / 2", () =>
    holds(roadLoad, (si, run) => {
      const { speed, mass, airDensity, dragArea, rollingCoefficient } = si as Record<string, number>;
      const { power } = roadLoadFromCoefficients.si({
        constantForce: (rollingCoefficient as number) * (mass as number) * 9.80665,
        squareForce: ((airDensity as number) * (dragArea as number)) / 2,
        speed: speed as number,
      });
      same(run({ grade: 0, headWind: 0 }).power, power);
    }));

  test("rises with every resistance", () =>
    holds(roadLoad, (si, run) => {
      for (const name of ["mass", "dragArea", "airDensity", "speed", "rollingCoefficient", "grade", "headWind"])
        expect(run({ [name]: of(si, name) + 0.01 }).force).toBeGreaterThanOrEqual(run().force as number);
    }));
});

describe("road load from coefficients", () => {
  test("power = force times speed, and force at v is the sum of the parts", () =>
    holds(roadLoadFromCoefficients, (si, run) => {
      const { force, power } = run();
      same(power, (force as number) * of(si, "speed"));
      const alone = run({ linearForce: 0 });
      expect((force as number) - (alone.force as number)).toBeCloseTo(of(si, "linearForce") * of(si, "speed"), 6);
    }));
});

describe("coast-down time", () => {
  test("t(v1 to v2) + t(v2 to v3) = t(v1 to v3)", () =>
    holds(coastDownTime, (si, run) => {
      const middle = (of(si, "fromSpeed") + of(si, "toSpeed")) / 2;
      same((run({ toSpeed: middle }).time as number) + (run({ fromSpeed: middle }).time as number), run().time, 1e-9);
    }));

  test("t is in proportion to the mass and in inverse proportion to all coefficients together", () =>
    holds(coastDownTime, (si, run) => {
      const { time } = run();
      same(run({ mass: 3 * of(si, "mass") }).time, 3 * (time as number));
      const doubled = Object.fromEntries(
        ["constantForce", "linearForce", "squareForce"].map((name) => [name, 2 * of(si, name)]),
      );
      same(run(doubled).time, (time as number) / 2, 1e-9);
    }));

  test("over a small drop it is inertia times drop over force", () =>
    holds(coastDownTime, (si, run) => {
      fc.pre(of(si, "fromSpeed") > 3);
      const speed = of(si, "fromSpeed");
      const drop = 1e-5 * speed;
      const { force } = roadLoadFromCoefficients.si({
        constantForce: of(si, "constantForce"),
        linearForce: of(si, "linearForce"),
        squareForce: of(si, "squareForce"),
        speed: speed - drop / 2,
      });
      const inertia = of(si, "mass") * (1 + of(si, "rotatingShare"));
      same(run({ toSpeed: speed - drop }).time, (inertia * drop) / force, 1e-6);
    }));

  test("crosses from arc tangent to logarithm without a step: t just above and just below 4 A C = B²", () => {
    const at = (A: number) =>
      coastDownTime.si({
        mass: 770,
        constantForce: A,
        linearForce: 4,
        squareForce: 0.4,
        fromSpeed: 25,
        toSpeed: 10,
      }).time;
    same(at(10 * (1 - 1e-9)), at(10), 1e-8);
    same(at(10 * (1 + 1e-9)), at(10), 1e-8);
  });
});

describe("two coast-downs", () => {
  test("the coefficients they give slow the vehicle as was measured, to the mean square of the speed", () =>
    holds(coastDownTwoSpeeds, (si, run) => {
      const { dragArea, rollingCoefficient, highForce, lowForce } = run();
      const forceAt = (from: string, to: string) => {
        const [a, b] = [of(si, from), of(si, to)];
        const square = (a * a + a * b + b * b) / 3;
        return (
          (rollingCoefficient as number) * of(si, "mass") * 9.80665 +
          ((dragArea as number) * of(si, "airDensity") * square) / 2
        );
      };
      same(forceAt("highFrom", "highTo"), highForce, 1e-9);
      same(forceAt("lowFrom", "lowTo"), lowForce, 1e-9);
    }));

  test("thicker air at the same times means less drag area and the same rolling resistance", () =>
    holds(coastDownTwoSpeeds, (si, run) => {
      const thick = run({ airDensity: 2 * of(si, "airDensity") });
      same(thick.dragArea, (run().dragArea as number) / 2);
      same(thick.rollingCoefficient, run().rollingCoefficient);
    }));
});

describe("reference air", () => {
  test("correcting there and back leaves the coefficient, and the drag area does not depend on the reference", () =>
    holds(dragToReferenceAir, (si, run) => {
      const there = run();
      const back = run({
        squareForce: there.correctedForce as number,
        airDensity: of(si, "referenceDensity"),
        referenceDensity: of(si, "airDensity"),
      });
      same(back.correctedForce, of(si, "squareForce"));
      same(back.dragArea, there.dragArea);
    }));
});

describe("tyre and gearing", () => {
  test("circumference over diameter is pi, and a taller side wall adds twice its height", () =>
    holds(tyreCircumference, (si, run) => {
      const { freeCircumference, freeDiameter } = run();
      same((freeCircumference as number) / (freeDiameter as number), Math.PI);
      const taller = run({ aspectRatio: of(si, "aspectRatio") + 0.1 });
      same((taller.freeDiameter as number) - (freeDiameter as number), 0.2 * of(si, "sectionWidth"), 1e-9);
    }));

  test("speed times ratio = engine speed times circumference, whichever way the ratio is split", () =>
    holds(speedFromEngineSpeed, (si, run) => {
      const { speed, overallRatio } = run();
      same((speed as number) * (overallRatio as number), of(si, "engineSpeed") * of(si, "rollingCircumference"));
      same(run({ gearRatio: of(si, "finalDrive"), finalDrive: of(si, "gearRatio") }).speed, speed);
    }));
});

describe("cruise fuel", () => {
  test("fuel power = indicated power / efficiency, and fuel per distance is fuel per time over speed", () =>
    holds(cruiseFuel, (si, run) => {
      const { brakePower, fuelMassFlow, economy } = run();
      const friction =
        (of(si, "frictionMeanEffectivePressure") * of(si, "engineDisplacement") * of(si, "engineSpeed")) / 2;
      same(
        (fuelMassFlow as number) * of(si, "heatingValue") * of(si, "indicatedEfficiency"),
        (brakePower as number) + friction + of(si, "blowerPower"),
      );
      same((economy as number) * (fuelMassFlow as number), of(si, "speed") * of(si, "fuelDensity"));
    }));

  test("what blower power adds to the fuel does not depend on the load", () =>
    holds(cruiseFuel, (si, run) => {
      const added = (roadPower: number) =>
        (run({ roadPower, blowerPower: 5000 }).fuelMassFlow as number) -
        (run({ roadPower, blowerPower: 0 }).fuelMassFlow as number);
      same(added(1000), added(20000), 1e-6);
      expect(added(of(si, "roadPower"))).toBeGreaterThan(0);
    }));

  test("energy: no more reaches the wheels than was in the fuel", () =>
    holds(cruiseFuel, (_, run) => expect(run().roadShare).toBeLessThan(1)));
});

describe("cost of boost", () => {
  test("fuel per distance with boost less that without = extra fuel per time over speed", () =>
    holds(boostFuelCost, (si, run) => {
      const { economyWithBoost, extraFuel, share } = run();
      const massPerDistance = (economy: number) => of(si, "fuelDensity") / economy;
      same(massPerDistance(economyWithBoost as number), massPerDistance(of(si, "economy")) * (1 + (share as number)));
      same((extraFuel as number) / of(si, "speed"), massPerDistance(of(si, "economy")) * (share as number));
    }));

  test("agrees with the cruise relation where nothing comes back on the pistons", () =>
    holds(boostFuelCost, (si, run) => {
      const { blowerPower, extraFuel } = run({ returnedShare: 0 });
      const cruise = (power: number) =>
        cruiseFuel.si({
          roadPower: 1000,
          speed: of(si, "speed"),
          engineDisplacement: of(si, "engineDisplacement"),
          engineSpeed: of(si, "engineSpeed"),
          blowerPower: power,
          indicatedEfficiency: of(si, "indicatedEfficiency"),
          heatingValue: of(si, "heatingValue"),
        }).fuelMassFlow;
      // Compared as wholes: where the blower takes little the difference of two cruises has few figures.
      same(cruise(0) + (extraFuel as number), cruise(blowerPower as number), 1e-12);
    }));
});

describe("acceleration time", () => {
  test("power times energy time = gain of kinetic energy, and the stretches add up", () =>
    holds(accelerationTime, (si, run) => {
      const [from, to] = [of(si, "fromSpeed"), of(si, "toSpeed")];
      const { energyTime, time } = run();
      same((energyTime as number) * of(si, "power"), (of(si, "mass") * (to * to - from * from)) / 2, 1e-9);
      const middle = (from + to) / 2;
      same((run({ toSpeed: middle }).time as number) + (run({ fromSpeed: middle }).time as number), time, 1e-9);
    }));
});
