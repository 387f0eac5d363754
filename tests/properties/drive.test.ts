// Identities of the belt drive's relations: equilibrium, limits, inverses, and two routes to one value.
import { ChargewrightError, kgPerM, kW, mm, mPerS, N, one, rpm } from "@chargewright/quantities";
import {
  type AnyRelation,
  beltCentreDistance,
  beltLength,
  beltPower,
  beltPowerFromStrength,
  beltSideLoad,
  beltSlipMargin,
  beltSpeed,
  beltTensionFromFrequency,
  beltTensionRatio,
  beltTensions,
  pulleyRatio,
  pulleyRimStress,
  solveFor,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, type Complete, siOf, validArguments } from "../support/random-inputs.ts";

/** Holds `identity` to a relation over random valid inputs in SI and the outputs they give. */
function always<I, O>(
  relation: { readonly si: (inputs: I) => O },
  identity: (inputs: Complete<I>, outputs: O) => readonly (readonly [left: number, right: number])[],
  relative = 1e-11,
): void {
  fc.assert(
    fc.property(validArguments(relation as unknown as AnyRelation), (args) => {
      const inputs = siOf(args) as Complete<I>;
      for (const [left, right] of identity(inputs, relation.si(inputs)))
        expect(agree(left, right, relative), `${left} against ${right}`).toBe(true);
    }),
    { numRuns: 300 },
  );
}

describe("pulley-ratio", () => {
  test("the pulleys exchanged: one over the ratio", () =>
    always(pulleyRatio, (si, { driveRatio }) => {
      const exchanged = { ...si, driverDiameter: si.drivenDiameter, drivenDiameter: si.driverDiameter, slip: 0 };
      return [[pulleyRatio.si(exchanged).driveRatio * driveRatio, 1 - si.slip]];
    }));

  test("both pulleys' rims run at one belt speed where nothing slips", () =>
    always(pulleyRatio, (si, { driverPitchDiameter, drivenPitchDiameter }) => {
      const { blowerSpeed } = pulleyRatio.si({ ...si, slip: 0 });
      return [[drivenPitchDiameter * blowerSpeed, driverPitchDiameter * si.engineSpeed]];
    }));

  test("the pitch line brings the ratio nearer to one, from either side", () =>
    always(pulleyRatio, (si, { uncorrectedRatio }) => {
      const { driveRatio } = pulleyRatio.si({ ...si, slip: 0 });
      expect(Math.abs(Math.log(driveRatio))).toBeLessThanOrEqual(Math.abs(Math.log(uncorrectedRatio)) + 1e-12);
      return [[pulleyRatio.si({ ...si, slip: 0, lineOffset: 0 }).driveRatio, uncorrectedRatio]];
    }));

  test("measured speeds give the slip", () => {
    const given = { driverDiameter: mm(141), drivenDiameter: mm(96), engineSpeed: rpm(2800) };
    const slip = solveFor(pulleyRatio, "slip", { blowerSpeed: rpm(4020) }, given);
    expect(agree(slip.si, 1 - 4020 / (1.45 * 2800), 1e-9)).toBe(true);
  });
});

describe("belt-length", () => {
  test("both wraps together make a full turn", () =>
    always(beltLength, (_, { driverWrap, drivenWrap }) => [[driverWrap + drivenWrap, 2 * Math.PI]]));

  test("length = both spans + both arcs; exchanging the pulleys changes nothing", () =>
    always(beltLength, (si, { length, span, driverWrap, drivenWrap }) => {
      const exchanged = { ...si, driverDiameter: si.drivenDiameter, drivenDiameter: si.driverDiameter };
      return [
        [length, 2 * span + (si.driverDiameter * driverWrap + si.drivenDiameter * drivenWrap) / 2],
        [beltLength.si(exchanged).length, length],
      ];
    }));

  test("equal pulleys: length = 2 a + pi d", () =>
    always(beltLength, (si) => {
      const equal = { ...si, drivenDiameter: si.driverDiameter, centreDistance: si.driverDiameter + si.centreDistance };
      return [[beltLength.si(equal).length, 2 * equal.centreDistance + Math.PI * si.driverDiameter]];
    }));

  test("shafts far apart: the series 2 a + pi (D + d)/2 + (D - d)²/(4 a)", () =>
    always(beltLength, (si) => {
      const far = { ...si, centreDistance: 20 * (si.driverDiameter + si.drivenDiameter) };
      const difference = si.driverDiameter - si.drivenDiameter;
      const series =
        2 * far.centreDistance +
        (Math.PI / 2) * (si.driverDiameter + si.drivenDiameter) +
        difference ** 2 / (4 * far.centreDistance);
      expect(agree(beltLength.si(far).length, series, 5e-8)).toBe(true);
      return [];
    }));
});

describe("belt-centre-distance", () => {
  test("belt-length gives length and wraps back", () =>
    always(beltCentreDistance, (si, { centreDistance, driverWrap, drivenWrap }) => {
      const back = beltLength.si({ ...si, centreDistance });
      return [
        [back.length, si.length],
        [back.driverWrap, driverWrap],
        [back.drivenWrap, drivenWrap],
      ];
    }));

  test("equal pulleys: a = (L - pi d)/2", () => {
    for (const diameter of [0.05, 0.1, 0.3])
      for (const length of [1.6, 2, 4]) {
        const { centreDistance } = beltCentreDistance.si({
          length,
          driverDiameter: diameter,
          drivenDiameter: diameter,
        });
        expect(agree(centreDistance, (length - Math.PI * diameter) / 2, 1e-13)).toBe(true);
      }
  });

  test("a longer belt asks for shafts further apart, by no less than half its length more", () =>
    always(beltCentreDistance, (si, { centreDistance }) => {
      const longer = beltCentreDistance.si({ ...si, length: 1.01 * si.length }).centreDistance;
      expect(longer - centreDistance).toBeGreaterThanOrEqual((0.01 * si.length) / 2 - 1e-12 * si.length);
      return [];
    }));

  test("refuses a belt too short to go round", () => {
    const short = () => beltCentreDistance({ length: mm(400), driverDiameter: mm(145), drivenDiameter: mm(100) });
    expect(short).toThrow(ChargewrightError);
    expect(short).toThrow(/two pulleys that touch/);
  });
});

describe("belt-speed", () => {
  test("belt speed = circumference · speed; centrifugal tension = mass per length · speed²", () =>
    always(beltSpeed, (si, { beltSpeed: v, centrifugalTension }) => [
      [v, 2 * Math.PI * (si.pitchDiameter / 2) * si.pulleySpeed],
      [centrifugalTension, si.massPerLength * v * v],
    ]));

  test("twice the speed, four times the centrifugal tension", () =>
    always(beltSpeed, (si, { centrifugalTension }) => [
      [beltSpeed.si({ ...si, pulleySpeed: 2 * si.pulleySpeed }).centrifugalTension, 4 * centrifugalTension],
    ]));
});

describe("belt-tension-ratio", () => {
  test("wraps add, ratios multiply", () =>
    always(beltTensionRatio, (si, { slipRatio }) => {
      const third = beltTensionRatio.si({ ...si, wrap: si.wrap / 3 }).slipRatio;
      return [[third * third * third, slipRatio]];
    }));

  test("a flat belt has its bare friction; a groove at most the ratio of sines more", () =>
    always(beltTensionRatio, (si, { effectiveFriction, usableRatio, slipRatio }) => {
      expect(effectiveFriction).toBeGreaterThanOrEqual(si.friction);
      expect(usableRatio).toBeLessThanOrEqual(Math.min(slipRatio, si.limitRatio));
      return [
        [beltTensionRatio.si({ ...si, grooveAngle: Math.PI }).effectiveFriction, si.friction],
        [effectiveFriction * Math.sin(si.grooveAngle / 2), si.friction],
      ];
    }));
});

describe("belt-tensions", () => {
  test("(tight - slack) · speed = power; the driving parts stand in the tension ratio", () =>
    always(
      beltTensions,
      (si, { pull, tightTension, slackTension, centrifugalTension, standingTension }) => {
        const driving = tightTension - centrifugalTension;
        if (driving < 1e-3 * tightTension || slackTension - centrifugalTension < 1e-3 * slackTension) return [];
        return [
          [pull * si.beltSpeed, si.power],
          [tightTension - slackTension, pull],
          [driving, si.tensionRatio * (slackTension - centrifugalTension)],
          [2 * standingTension, tightTension + slackTension],
        ];
      },
      1e-10,
    ));

  test("belt-power at that standing tension gives the power and the tensions back", () =>
    always(
      beltTensions,
      (si, { standingTension, tightTension, slackTension, centrifugalTension }) => {
        if (centrifugalTension > 0.95 * standingTension) return [];
        const back = beltPower.si({ ...si, standingTension });
        return [
          [back.power, si.power],
          [back.tightTension, tightTension],
          [back.slackTension, slackTension],
        ];
      },
      1e-10,
    ));
});

describe("belt-power", () => {
  test("tight + slack = twice the standing tension; (tight - slack) · speed = power", () =>
    always(
      beltPower,
      (si, { tightTension, slackTension, power }) => {
        const pull = tightTension - slackTension;
        return [
          [tightTension + slackTension, 2 * si.standingTension],
          ...(pull > 1e-3 * tightTension ? ([[pull * si.beltSpeed, power]] as const) : []),
        ];
      },
      1e-10,
    ));

  test("10 % more tension, 10 % more power, where the belt weighs nothing", () =>
    always(beltPower, (si) => {
      const light = { ...si, massPerLength: 0 };
      return [
        [beltPower.si({ ...light, standingTension: 1.1 * si.standingTension }).power, 1.1 * beltPower.si(light).power],
      ];
    }));

  test("endless friction: the slack span carries nothing but its own mass, tight = 2 T0 - Tc", () =>
    always(beltPower, (si, { centrifugalTension }) => {
      const { tightTension, slackTension } = beltPower.si({ ...si, tensionRatio: 1e16 });
      return [
        [tightTension, 2 * si.standingTension - centrifugalTension],
        [slackTension + si.standingTension, centrifugalTension + si.standingTension],
      ];
    }));
});

describe("belt-power-from-strength", () => {
  test("tight side + centrifugal tension = permitted tension; power = pull · speed", () =>
    always(beltPowerFromStrength, (si, { tightTension, centrifugalTension, slackTension, power }) => [
      [tightTension + centrifugalTension, si.tensionLimit],
      [slackTension * si.tensionRatio, tightTension],
      [power, (tightTension - tightTension / si.tensionRatio) * si.beltSpeed],
    ]));

  test("at the best speed centrifugal tension is a third of the permitted one, and no other speed carries more", () =>
    always(beltPowerFromStrength, (si, { power, bestSpeed }) => {
      const best = beltPowerFromStrength.si({ ...si, beltSpeed: bestSpeed });
      expect(power).toBeLessThanOrEqual(best.power * (1 + 1e-12));
      return [[3 * best.centrifugalTension, si.tensionLimit]];
    }));

  test("the same belt, tensioned to run at its limit, by belt-power", () =>
    always(
      beltPowerFromStrength,
      (si, { power, tightTension, slackTension, centrifugalTension }) => {
        const standingTension = (tightTension + slackTension) / 2 + centrifugalTension;
        return [[beltPower.si({ ...si, standingTension }).power, power]];
      },
      1e-10,
    ));
});

describe("belt-slip-margin", () => {
  test("margin · power = capacity, which is that of belt-power", () =>
    always(beltSlipMargin, (si, { margin, capacity }) => [
      [margin * si.power, capacity],
      [capacity, beltPower.si(si).power],
    ]));

  test("at the least tension the margin is one, and belt-tensions names the same tension", () =>
    always(
      beltSlipMargin,
      (si, { leastTension }) => {
        const { standingTension, centrifugalTension } = beltTensions.si(si);
        if (centrifugalTension > 0.95 * leastTension) return [];
        return [
          [beltSlipMargin.si({ ...si, standingTension: leastTension }).margin, 1],
          [standingTension, leastTension],
        ];
      },
      1e-10,
    ));

  test("solved backwards: the power at a wanted margin", () => {
    const given = {
      standingTension: N(250),
      tensionRatio: one(4),
      beltSpeed: mPerS(21.3),
      massPerLength: kgPerM(0.12),
    };
    const { power: capacity } = beltPower(given);
    const power = solveFor(beltSlipMargin, "power", { margin: one(2) }, given);
    expect(agree(power.si, capacity.si / 2, 1e-9)).toBe(true);
    expect(power.in(kW)).toBeGreaterThan(1);
  });
});

describe("belt-side-load", () => {
  test("half a turn: the sum of both driving tensions", () =>
    always(beltSideLoad, (si) => [
      [
        beltSideLoad.si({ ...si, wrap: Math.PI }).sideLoad,
        si.tightTension + si.slackTension - 2 * si.centrifugalTension,
      ],
    ]));

  test("cosine rule: F² = T1² + T2² - 2 T1 T2 cos(wrap), the driving parts", () =>
    always(beltSideLoad, (si, { sideLoad }) => {
      const [tight, slack] = [si.tightTension - si.centrifugalTension, si.slackTension - si.centrifugalTension];
      return [[sideLoad, Math.sqrt(tight ** 2 + slack ** 2 - 2 * tight * slack * Math.cos(si.wrap))]];
    }));

  test("equal spans: twice the tension times the sine of half the wrap", () =>
    always(beltSideLoad, (si) => {
      const standing = { ...si, slackTension: si.tightTension };
      return [
        [beltSideLoad.si(standing).sideLoad, 2 * (si.tightTension - si.centrifugalTension) * Math.sin(si.wrap / 2)],
      ];
    }));

  test("forces and moments on the shaft balance", () =>
    always(beltSideLoad, (si, { sideLoad, nearBearingLoad, farBearingLoad }) => [
      [nearBearingLoad, sideLoad + farBearingLoad],
      [farBearingLoad * si.bearingSpacing, sideLoad * si.overhang],
    ]));
});

describe("belt-tension-from-frequency", () => {
  test("frequency = wave speed over twice the span, wave speed² = tension over mass per length", () =>
    always(beltTensionFromFrequency, (si, { standingTension }) => [
      [Math.sqrt(standingTension / si.massPerLength) / (2 * si.spanLength), si.frequency],
    ]));

  test("an octave higher is four times the tension", () =>
    always(beltTensionFromFrequency, (si, { standingTension }) => [
      [beltTensionFromFrequency.si({ ...si, frequency: 2 * si.frequency }).standingTension, 4 * standingTension],
    ]));
});

describe("pulley-rim-stress", () => {
  test("at the greatest speed the stress is the permitted one, and the rim runs at its greatest speed", () =>
    always(pulleyRimStress, (si, { greatestSpeed, greatestRimSpeed }) => {
      const { stress, rimSpeed, usedShare } = pulleyRimStress.si({ ...si, pulleySpeed: greatestSpeed });
      return [
        [stress, si.permittedStress],
        [rimSpeed, greatestRimSpeed],
        [usedShare, 1],
      ];
    }));

  test("stress goes with the square of diameter · speed, and not with either alone", () =>
    always(pulleyRimStress, (si, { stress }) => [
      [pulleyRimStress.si({ ...si, pulleySpeed: 2 * si.pulleySpeed }).stress, 4 * stress],
      [
        pulleyRimStress.si({ ...si, outsideDiameter: 2 * si.outsideDiameter, pulleySpeed: si.pulleySpeed / 2 }).stress,
        stress,
      ],
    ]));

  test("equilibrium of half a ring: 2 · stress = density · omega² · diameter²/2", () =>
    always(pulleyRimStress, (si, { stress }) => {
      const omega = 2 * Math.PI * si.pulleySpeed;
      return [[2 * stress, (si.density * omega ** 2 * si.outsideDiameter ** 2) / 2]];
    }));
});
