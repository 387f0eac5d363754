// Identities of the relief relations: what must hold whatever the numbers are.
import { degC, gPerS, kPa, mm2 } from "@chargewright/quantities";
import {
  type AnyRelation,
  bypassFlow,
  coilSpringRate,
  orificeFlow,
  poppetValveArea,
  reliefArea,
  reliefSpringPreload,
  reliefValveBoost,
  reliefValveLift,
  sharpOrificeFlow,
  solveFor,
  twoReliefValves,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, type Complete, siOf, validArguments } from "../support/random-inputs.ts";

const R = 287.05287;
const GAMMA = 1.4;
const CRITICAL = (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1));

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

const hole = { upstreamPressure: 150e3, upstreamTemperature: 350, area: 1e-4, dischargeCoefficient: 0.6 };
const through = (ratio: number) => orificeFlow.si({ ...hole, downstreamPressure: ratio * 150e3 }).massFlow;

describe("orifice-flow", () => {
  test("is the flow at the Mach number of the isentropic expansion", () =>
    always(orificeFlow, (si, { massFlow }) => {
      const ratio = Math.max(si.downstreamPressure / si.upstreamPressure, CRITICAL);
      if (ratio > 0.99) return [];
      const mach = Math.sqrt((2 / (GAMMA - 1)) * (ratio ** (-(GAMMA - 1) / GAMMA) - 1));
      const warmth = 1 + ((GAMMA - 1) / 2) * mach ** 2;
      const flux =
        (si.upstreamPressure / Math.sqrt(si.upstreamTemperature)) *
        Math.sqrt(GAMMA / R) *
        mach *
        warmth ** (-(GAMMA + 1) / (2 * (GAMMA - 1)));
      return [[massFlow, si.dischargeCoefficient * si.area * flux]];
    }));

  test("a small drop is Bernoulli's: C·A·√(2·density·drop)", () => {
    for (const drop of [1e-3, 1, 100]) {
      const downstreamPressure = 150e3 - drop;
      const { massFlow } = orificeFlow.si({ ...hole, downstreamPressure });
      const bernoulli = 0.6 * 1e-4 * Math.sqrt(2 * (150e3 / (R * 350)) * drop);
      expect(agree(massFlow, bernoulli, (2 * drop) / 150e3 + 1e-9)).toBe(true);
    }
  });

  test("continuous at choking, with slope zero, and flat below", () => {
    const choked = through(0);
    expect(through(CRITICAL - 1e-9)).toBe(choked);
    expect(agree(through(CRITICAL + 1e-9), choked, 1e-15)).toBe(true);
    expect(Math.abs(through(CRITICAL + 1e-4) - choked) / choked).toBeLessThan(1e-7);
  });

  test("falls as the downstream pressure rises, to none at equal pressures, and the kernel gives none beyond", () => {
    for (let i = 0; i < 1000; i++) expect(through((i + 1) / 1000)).toBeLessThanOrEqual(through(i / 1000));
    expect(through(1)).toBe(0);
    expect(through(1.0001)).toBe(0);
    expect(through(3)).toBe(0);
  });

  test("goes with area and upstream pressure, and with the root of the reciprocal temperature", () =>
    always(orificeFlow, (si, { massFlow }) => [
      [orificeFlow.si({ ...si, area: 3 * si.area }).massFlow, 3 * massFlow],
      [
        orificeFlow.si({
          ...si,
          upstreamPressure: 2 * si.upstreamPressure,
          downstreamPressure: 2 * si.downstreamPressure,
        }).massFlow,
        2 * massFlow,
      ],
      [orificeFlow.si({ ...si, upstreamTemperature: 4 * si.upstreamTemperature }).massFlow, massFlow / 2],
    ]));
});

describe("sharp-orifice-flow", () => {
  const sharp = (ratio: number, incompressibleCoefficient = 0.6) =>
    sharpOrificeFlow.si({
      upstreamPressure: 150e3,
      upstreamTemperature: 350,
      downstreamPressure: ratio * 150e3,
      area: 1e-4,
      incompressibleCoefficient,
    });

  test("at a small drop its coefficient is the given one", () => {
    for (const given of [0.5, 0.58, 0.6, 0.611, 0.62, 0.7, 0.9])
      expect(agree(sharp(1 - 1e-9, given).dischargeCoefficient, given, 1e-8)).toBe(true);
    expect(sharp(1, 0.6)).toEqual({ massFlow: 0, dischargeCoefficient: 0.6, flowFunction: 0 });
  });

  test("the flow is the nozzle's with that coefficient", () =>
    always(sharpOrificeFlow, (si, { massFlow, dischargeCoefficient, flowFunction }) => {
      const nozzle = orificeFlow.si({ ...si, dischargeCoefficient: 1 });
      return [
        [massFlow, dischargeCoefficient * nozzle.massFlow],
        [flowFunction, nozzle.flowFunction],
      ];
    }));

  test("keeps gaining below the nozzle's critical ratio, without a jump there", () => {
    for (let i = 0; i < 990; i++) expect(sharp(i / 1000).massFlow).toBeGreaterThan(sharp((i + 1) / 1000).massFlow);
    expect(agree(sharp(CRITICAL - 1e-9).massFlow, sharp(CRITICAL + 1e-9).massFlow, 1e-8)).toBe(true);
    const gain = sharp(0).massFlow / sharp(CRITICAL).massFlow;
    expect(gain).toBeGreaterThan(1.15);
    expect(gain).toBeLessThan(1.2);
  });

  test("momentum of the jet = pressure on the opening + force defect of the edge, down to the critical ratio", () =>
    always(
      sharpOrificeFlow,
      (si, { dischargeCoefficient: c, flowFunction: psi }) => {
        const r = si.downstreamPressure / si.upstreamPressure;
        if (r < CRITICAL || r > 0.99) return [];
        const f = 1 / si.incompressibleCoefficient - 1 / (2 * si.incompressibleCoefficient ** 2);
        // Per opening area and upstream pressure: the jet's momentum flux against pressure and defect.
        const jet = (c * psi ** 2) / r ** (1 / GAMMA);
        return [[jet, 1 - r + f * (c * psi) ** 2]];
      },
      1e-9,
    ));
});

describe("relief-area", () => {
  test("is the inverse of the flow through an opening", () =>
    always(reliefArea, (si, { area }) => [[orificeFlow.si({ ...si, area }).massFlow, si.bypassFlow]]));

  test("a quarter of pi times the diameter squared is the area; a better coefficient takes less of it", () =>
    always(reliefArea, (si, { area, diameter }) => [
      [(Math.PI * diameter ** 2) / 4, area],
      [reliefArea.si({ ...si, dischargeCoefficient: 1 }).area, area * si.dischargeCoefficient],
    ]));
});

describe("poppet-valve-area", () => {
  test("at the full lift the curtain equals the port", () =>
    always(poppetValveArea, (si, { fullLift, portArea }) => [
      [poppetValveArea.si({ ...si, lift: fullLift }).curtainArea, portArea],
    ]));

  test("flat seat: curtain = pi · diameter · lift, full lift = diameter / 4", () =>
    always(poppetValveArea, (si) => {
      const flat = poppetValveArea.si({ ...si, seatAngle: 0 });
      return [
        [flat.curtainArea, Math.PI * si.seatDiameter * si.lift],
        [flat.fullLift, si.seatDiameter / 4],
      ];
    }));

  test("the flow area grows with the lift and never passes the port", () =>
    always(poppetValveArea, (si, { flowArea, portArea }) => {
      expect(flowArea).toBeLessThanOrEqual(portArea);
      expect(poppetValveArea.si({ ...si, lift: 1.1 * si.lift }).flowArea).toBeGreaterThanOrEqual(flowArea);
      return [];
    }));
});

describe("relief-valve-lift", () => {
  test("the curtain at that lift passes the wanted flow", () =>
    always(reliefValveLift, (si, { lift, area }) => [
      [poppetValveArea.si({ ...si, lift }).curtainArea, area],
      [orificeFlow.si({ ...si, area }).massFlow, si.bypassFlow],
    ]));

  test("is at most the full lift of the valve, and there the port is used up", () =>
    always(reliefValveLift, (si, { lift, portShare, area }) => {
      const { fullLift, portArea } = poppetValveArea.si({ ...si, lift });
      expect(lift).toBeLessThanOrEqual(fullLift * (1 + 1e-12));
      return [[portShare, area / portArea]];
    }));
});

describe("bypass-flow", () => {
  test("blower delivery = engine flow + bypass flow", () =>
    always(bypassFlow, (si, { bypassFlow: bypass, engineFlow }) => {
      const pressure = si.barometer + si.closedBoost;
      const delivery = si.closedFlow * (1 + (si.deliverySlope * (si.closedBoost - si.wantedBoost)) / pressure);
      return [[bypass + engineFlow, delivery]];
    }));

  test("nothing to bleed at the closed boost; without leakage all of the air that the engine no longer takes", () =>
    always(bypassFlow, (si, { engineFlow }) => {
      const tight = bypassFlow.si({ ...si, deliverySlope: 0 });
      expect(bypassFlow.si({ ...si, wantedBoost: si.closedBoost }).bypassFlow).toBe(0);
      return [[tight.bypassFlow + engineFlow, si.closedFlow]];
    }));
});

describe("relief-valve-boost", () => {
  test("what the bleed to that boost asks for is what the opening passes", () =>
    always(
      reliefValveBoost,
      (si, { boost, reliefFlow, engineFlow }) => {
        const wanted = bypassFlow.si({ ...si, wantedBoost: boost });
        // Nearly shut, the difference of two boosts has no figures left.
        return reliefFlow < 1e-3 * engineFlow ? [] : [[wanted.bypassFlow, reliefFlow]];
      },
      1e-9,
    ));

  test("a shut opening leaves the boost as it was; a larger one never leaves more", () =>
    always(reliefValveBoost, (si, { boost }) => {
      expect(boost).toBeLessThanOrEqual(si.closedBoost);
      expect(boost).toBeGreaterThan(0);
      expect(reliefValveBoost.si({ ...si, area: 2 * si.area }).boost).toBeLessThanOrEqual(boost * (1 + 1e-14));
      return [[reliefValveBoost.si({ ...si, area: 0 }).boost, si.closedBoost]];
    }));

  test("area for a wanted boost: by solving backwards, and by bleed and opening in turn", () => {
    const state = { closedFlow: gPerS(36.7), closedBoost: kPa.gauge(45), barometer: kPa(93.9) };
    const area = solveFor(reliefValveBoost, "area", { boost: kPa.gauge(35) }, { ...state, temperature: degC(38) });
    const { bypassFlow: flow } = bypassFlow({ ...state, wantedBoost: kPa.gauge(35) });
    const direct = reliefArea({
      bypassFlow: flow,
      upstreamPressure: kPa(128.9),
      upstreamTemperature: degC(38),
      downstreamPressure: kPa(93.9),
    });
    expect(agree(area.in(mm2), direct.area.in(mm2), 1e-9)).toBe(true);
  });
});

describe("two-relief-valves", () => {
  test("each passes what it passes alone, and the sum is one opening of the effective area", () =>
    always(twoReliefValves, (si, { firstFlow, totalFlow, effectiveArea }) => [
      [firstFlow, orificeFlow.si({ ...si, area: si.firstArea, dischargeCoefficient: si.firstCoefficient }).massFlow],
      [totalFlow, orificeFlow.si({ ...si, area: effectiveArea, dischargeCoefficient: 1 }).massFlow],
    ]));

  test("the valves change places; with one stuck at most half is left", () =>
    always(twoReliefValves, (si, { totalFlow, coverage, coverageWithOneStuck }) => {
      const swapped = twoReliefValves.si({
        ...si,
        firstArea: si.secondArea,
        secondArea: si.firstArea,
        firstCoefficient: si.secondCoefficient,
        secondCoefficient: si.firstCoefficient,
      });
      expect(coverageWithOneStuck).toBeLessThanOrEqual((coverage / 2) * (1 + 1e-14));
      return [
        [swapped.totalFlow, totalFlow],
        [swapped.coverageWithOneStuck, coverageWithOneStuck],
      ];
    }));
});

describe("relief-spring-preload", () => {
  test("spring force = pressure on the seat, at opening and at the lift", () =>
    always(reliefSpringPreload, (si, { preload, precompression, pressureAtLift }) => {
      const seat = (Math.PI * si.seatDiameter ** 2) / 4;
      return [
        [preload, si.openingPressure * seat],
        [si.springRate * (precompression + si.lift), pressureAtLift * seat],
      ];
    }));

  test("without lift no rise; twice the seat diameter a quarter of the rise", () =>
    always(reliefSpringPreload, (si, { pressureRise }) => {
      expect(reliefSpringPreload.si({ ...si, lift: 0 }).pressureRise).toBe(0);
      return [[reliefSpringPreload.si({ ...si, seatDiameter: 2 * si.seatDiameter }).pressureRise, pressureRise / 4]];
    }));
});

describe("coil-spring-rate", () => {
  test("half the coils are twice as stiff; two springs in series half", () =>
    always(coilSpringRate, (si, { springRate }) => [
      [coilSpringRate.si({ ...si, activeCoils: si.activeCoils / 2 }).springRate, 2 * springRate],
      [1 / (1 / springRate + 1 / springRate), coilSpringRate.si({ ...si, activeCoils: 2 * si.activeCoils }).springRate],
    ]));

  test("all lengths doubled, the rate doubles and the index stays", () =>
    always(coilSpringRate, (si, { springRate, springIndex }) => {
      const double = coilSpringRate.si({
        ...si,
        wireDiameter: 2 * si.wireDiameter,
        coilDiameter: 2 * si.coilDiameter,
      });
      return [
        [double.springRate, 2 * springRate],
        [double.springIndex, springIndex],
      ];
    }));
});
