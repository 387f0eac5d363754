// Identities of the duct relations: what must hold whatever the numbers are.
import { degC, gPerS, kPa, m, mm, one } from "@chargewright/quantities";
import {
  type AnyRelation,
  airDensity,
  bendAnchorForce,
  bendLossCoefficient,
  compressibleDuctDrop,
  conicalDiffuser,
  ductContraction,
  ductRunPressureDrop,
  ductSpeed,
  fittingPressureDrop,
  frictionFactor,
  hoopStress,
  hoseEndThrust,
  hydraulicDiameter,
  leakFlow,
  mitreLossCoefficient,
  orificeFlow,
  reynoldsNumber,
  solveFor,
  straightPressureDrop,
  suddenExpansion,
  sumDuctRun,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, type Complete, siOf, validArguments } from "../support/random-inputs.ts";

const R = 287.05287;
const GAMMA = 1.4;

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

const grid = (least: number, most: number, points: number) =>
  Array.from({ length: points }, (_, i) => least * (most / least) ** (i / (points - 1)));

describe("duct-speed", () => {
  test("mass flow = density · speed · area, and the density is that of dry air", () =>
    always(ductSpeed, (si, { speed, density }) => [
      [si.massFlow, (density * speed * Math.PI * si.bore ** 2) / 4],
      [density, airDensity.si(si).density],
    ]));

  test("dynamic pressure = gamma/2 · pressure · Mach²", () =>
    always(ductSpeed, (si, { mach, dynamicPressure }) => [[dynamicPressure, (GAMMA / 2) * si.pressure * mach ** 2]]));

  test("half the bore takes sixteen times the dynamic pressure", () =>
    always(ductSpeed, (si, { dynamicPressure }) => [
      [ductSpeed.si({ ...si, bore: si.bore / 2 }).dynamicPressure, 16 * dynamicPressure],
    ]));
});

describe("hydraulic-diameter", () => {
  test("of a square is its side, and never above the bore of equal area", () =>
    always(hydraulicDiameter, (si, { hydraulicDiameter: hydraulic, equalAreaBore }) => {
      expect(hydraulic).toBeLessThan(equalAreaBore);
      return [[hydraulicDiameter.si({ width: si.width, height: si.width }).hydraulicDiameter, si.width]];
    }));

  test("width and height change places", () =>
    always(hydraulicDiameter, (si, outputs) => {
      const turned = hydraulicDiameter.si({ width: si.height, height: si.width });
      return [
        [turned.hydraulicDiameter, outputs.hydraulicDiameter],
        [turned.area, outputs.area],
      ];
    }));
});

describe("reynolds-number", () => {
  test("= density · speed · bore / viscosity, whatever the density", () =>
    always(reynoldsNumber, (si, { reynolds }) =>
      [0.5, 1.2, 1000].map((density) => {
        const speed = (4 * si.massFlow) / (Math.PI * si.bore ** 2 * density);
        return [reynolds, (density * speed * si.bore) / si.viscosity] as const;
      }),
    ));

  test("doubles with the flow and halves with the bore's double", () =>
    always(reynoldsNumber, (si, { reynolds }) => [
      [reynoldsNumber.si({ ...si, massFlow: 2 * si.massFlow }).reynolds, 2 * reynolds],
      [reynoldsNumber.si({ ...si, bore: 2 * si.bore }).reynolds, reynolds / 2],
    ]));
});

describe("friction-factor", () => {
  test("Colebrook's equation holds", () =>
    always(frictionFactor, (si, { turbulentFactor }) => {
      const root = Math.sqrt(turbulentFactor);
      return [[1 / root, -2 * Math.log10(si.roughness / si.bore / 3.7 + 2.51 / (si.reynolds * root))]];
    }));

  test("laminar: f · Re = 64; turbulent: f = f_t", () =>
    always(frictionFactor, (si, { frictionFactor: f, turbulentFactor }) => [
      si.reynolds <= 2000 ? [f * si.reynolds, 64] : si.reynolds >= 4000 ? [f, turbulentFactor] : [f, f],
    ]));

  test("the transition joins without a jump in value or slope", () => {
    const at = (reynolds: number) => frictionFactor.si({ reynolds, bore: 0.05, roughness: 1e-6 }).frictionFactor;
    for (const joint of [2000, 4000]) {
      expect(Math.abs(at(joint + 1e-6) / at(joint - 1e-6) - 1)).toBeLessThan(1e-8);
      const before = (at(joint) - at(joint - 0.1)) / 0.1;
      const after = (at(joint + 0.1) - at(joint)) / 0.1;
      expect(Math.abs(after - before)).toBeLessThan(1e-7);
    }
  });

  test("Haaland's formula stays within 2 % of it over the chart", () => {
    for (const reynolds of grid(4000, 1e8, 60))
      for (const relativeRoughness of [0, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 0.05]) {
        const haaland = (-1.8 * Math.log10((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds)) ** -2;
        const { turbulentFactor } = frictionFactor.si({ reynolds, bore: 1, roughness: relativeRoughness });
        expect(Math.abs(haaland / turbulentFactor - 1), `Re ${reynolds}`).toBeLessThan(0.02);
      }
  });

  test("fully rough: no Reynolds number enters any more", () => {
    const rough = (1 / (2 * Math.log10(3.7 / 0.05))) ** 2;
    const { turbulentFactor } = frictionFactor.si({ reynolds: 1e8, bore: 1, roughness: 0.05 });
    expect(agree(turbulentFactor, rough, 1e-4)).toBe(true);
  });

  test("a rougher wall never costs less; a faster turbulent flow never has the greater factor", () =>
    always(frictionFactor, (si, { turbulentFactor }) => {
      const rougher = frictionFactor.si({ ...si, roughness: si.roughness + 0.001 * si.bore });
      const faster = frictionFactor.si({ ...si, reynolds: 1.5 * si.reynolds });
      expect(rougher.turbulentFactor).toBeGreaterThan(turbulentFactor);
      expect(faster.turbulentFactor).toBeLessThanOrEqual(turbulentFactor * (1 + 1e-14));
      return [];
    }));
});

describe("straight-pressure-drop", () => {
  test("goes with the length, and laminar as Hagen and Poiseuille have it", () =>
    always(straightPressureDrop, (si, { pressureDrop, speed, reynolds }) => {
      const double = straightPressureDrop.si({ ...si, length: 2 * si.length }).pressureDrop;
      const poiseuille = (32 * si.viscosity * si.length * speed) / si.bore ** 2;
      return [[double, 2 * pressureDrop], ...(reynolds < 2000 ? [[pressureDrop, poiseuille] as const] : [])];
    }));

  test("at the same mass flow goes with the reciprocal of density", () =>
    always(straightPressureDrop, (si, { pressureDrop }) => [
      [straightPressureDrop.si({ ...si, density: si.density / 2 }).pressureDrop, 2 * pressureDrop],
    ]));

  test("between half and full turbulent flow the exponent lies between 1.7 and 2", () => {
    for (const massFlow of grid(0.01, 0.2, 20))
      for (const roughness of [0, 2.5e-6, 45.7e-6, 1e-3]) {
        const pipe = { density: 1.4, bore: 0.051, length: 1, viscosity: 21e-6, roughness };
        const drop = (flow: number) => straightPressureDrop.si({ ...pipe, massFlow: flow }).pressureDrop;
        const exponent = Math.log2(drop(2 * massFlow) / drop(massFlow));
        expect(exponent).toBeGreaterThan(1.7);
        expect(exponent).toBeLessThan(2);
      }
  });
});

describe("fitting-pressure-drop", () => {
  test("= K · density/2 · speed²; a coefficient of 1 costs the dynamic pressure", () =>
    always(fittingPressureDrop, (si, { pressureDrop, speed, dynamicPressure }) => [
      [pressureDrop, (si.lossCoefficient * si.density * speed ** 2) / 2],
      [fittingPressureDrop.si({ ...si, lossCoefficient: 1 }).pressureDrop, dynamicPressure],
    ]));

  test("a coefficient carried to another bore goes with the fourth power of the ratio of bores", () =>
    always(fittingPressureDrop, (si, { pressureDrop }) => [
      [
        fittingPressureDrop.si({ ...si, bore: 2 * si.bore, lossCoefficient: 16 * si.lossCoefficient }).pressureDrop,
        pressureDrop,
      ],
    ]));
});

describe("bend-loss-coefficient", () => {
  test("of no angle is none, and grows with the angle up to a right one", () => {
    const at = (angle: number, radiusRatio: number) => bendLossCoefficient.si({ angle, radiusRatio }).lossCoefficient;
    for (const radius of [0.5, 1, 1.5, 2, 3, 5, 10]) {
      expect(at(1e-12, radius)).toBeLessThan(1e-5);
      for (let angle = 1; angle < 90; angle++)
        expect(at(((angle + 1) * Math.PI) / 180, radius)).toBeGreaterThan(at((angle * Math.PI) / 180, radius));
    }
  });

  test("is never less than the friction of its own length, and least near two to three bores at 90°", () => {
    always(bendLossCoefficient, (si, { lossCoefficient }) => {
      expect(lossCoefficient).toBeGreaterThan(si.frictionFactor * si.angle * si.radiusRatio);
      return [];
    });
    const at = (radiusRatio: number) => bendLossCoefficient.si({ angle: Math.PI / 2, radiusRatio }).lossCoefficient;
    const best = grid(0.5, 20, 400).reduce((a, b) => (at(a) < at(b) ? a : b));
    expect(best).toBeGreaterThan(2);
    expect(best).toBeLessThan(3.2);
  });
});

describe("mitre-loss-coefficient", () => {
  const at = (degrees: number) => mitreLossCoefficient.si({ angle: (degrees * Math.PI) / 180 }).lossCoefficient;

  test("of no angle is none, and grows with the angle", () => {
    expect(at(0)).toBe(0);
    for (let angle = 0; angle < 150; angle++) expect(at(angle + 1)).toBeGreaterThan(at(angle));
  });

  test("two mitres of half the angle cost less than one, and one costs more than the tightest bend", () => {
    for (let angle = 10; angle <= 150; angle += 5) {
      expect(2 * at(angle / 2)).toBeLessThan(at(angle));
      if (angle < 60) continue;
      const bend = bendLossCoefficient.si({ angle: (angle * Math.PI) / 180, radiusRatio: 1 }).lossCoefficient;
      expect(at(angle)).toBeGreaterThan(bend);
    }
  });
});

describe("sudden-expansion", () => {
  test("static rise + loss = what the speed gives up", () =>
    always(suddenExpansion, (si, { pressureDrop, staticRise, speed }) => {
      const sigma = (si.smallBore / si.largeBore) ** 2;
      if (sigma > 0.99) return [];
      return [[staticRise + pressureDrop, ((1 - sigma ** 2) * si.density * speed ** 2) / 2]];
    }));

  test("momentum balance: rise · wide area = mass flow · change of speed", () =>
    always(suddenExpansion, (si, { staticRise, speed }) => {
      const sigma = (si.smallBore / si.largeBore) ** 2;
      if (sigma > 0.99) return [];
      const area = (Math.PI * si.largeBore ** 2) / 4;
      return [[staticRise * area, si.massFlow * speed * (1 - sigma)]];
    }));

  test("no step costs nothing; into the open the whole dynamic pressure is lost", () => {
    const step = (largeBore: number) =>
      suddenExpansion.si({ massFlow: 0.04, density: 1.4, smallBore: 0.05, largeBore });
    expect(step(0.05).pressureDrop).toBe(0);
    expect(step(1).lossCoefficient).toBeGreaterThan(0.99);
  });
});

describe("conical-diffuser", () => {
  test("without friction a cone of 45.2° and more is a step, and a slender one costs less", () =>
    always(conicalDiffuser, (si, { lossCoefficient }) => {
      const smooth = conicalDiffuser.si({ ...si, frictionFactor: 0 });
      const step = suddenExpansion.si(si);
      expect(smooth.lossCoefficient).toBeLessThanOrEqual(step.lossCoefficient * (1 + 1e-12));
      expect(lossCoefficient).toBeGreaterThanOrEqual(smooth.lossCoefficient * (1 - 1e-14));
      return si.angle > 0.79 ? [[smooth.lossCoefficient, step.lossCoefficient]] : [];
    }));

  test("the ideal rise is the step's rise and loss together", () =>
    always(conicalDiffuser, (si, { idealRise }) => {
      const { staticRise, pressureDrop } = suddenExpansion.si(si);
      return [[idealRise, staticRise + pressureDrop]];
    }));

  test("length · tangent of half the angle = half the difference of the bores; a cone of 180° has none", () =>
    always(conicalDiffuser, (si, { length }) =>
      si.angle > 3 ? [] : [[length * Math.tan(si.angle / 2), (si.largeBore - si.smallBore) / 2]],
    ));
});

describe("duct-contraction", () => {
  test("static drop = loss + what the speed takes", () =>
    always(ductContraction, (si, { pressureDrop, staticDrop, speed }) => {
      const sigma = (si.smallBore / si.largeBore) ** 2;
      if (sigma > 0.99) return [];
      return [[staticDrop, pressureDrop + ((1 - sigma ** 2) * si.density * speed ** 2) / 2]];
    }));

  test("no step costs nothing, the sharp step most, and a wide vessel's half of the dynamic pressure at most", () =>
    always(ductContraction, (si, { lossCoefficient }) => {
      const sharp = ductContraction.si({ ...si, angle: Math.PI }).lossCoefficient;
      expect(lossCoefficient).toBeLessThanOrEqual(sharp * (1 + 1e-14));
      expect(sharp).toBeLessThanOrEqual(0.5);
      return [[ductContraction.si({ ...si, largeBore: si.smallBore }).lossCoefficient, 0]];
    }));
});

describe("duct-run-pressure-drop", () => {
  test("= straight + fitting, at the density of the inlet", () =>
    always(ductRunPressureDrop, (si, { pressureDrop }) => {
      const density = si.pressure / (R * si.temperature);
      const straight = straightPressureDrop.si({ ...si, density }).pressureDrop;
      const fitting = fittingPressureDrop.si({ ...si, density, lossCoefficient: si.lossCoefficients }).pressureDrop;
      return [[pressureDrop, straight + fitting]];
    }));

  test("total coefficient · dynamic pressure = drop; speed and Mach are those of the duct", () =>
    always(ductRunPressureDrop, (si, { pressureDrop, totalCoefficient, speed, mach }) => {
      const duct = ductSpeed.si(si);
      return [
        [pressureDrop, totalCoefficient * duct.dynamicPressure],
        [speed, duct.speed],
        [mach, duct.mach],
      ];
    }));

  test("two runs in a row cost the sum of both", () =>
    always(ductRunPressureDrop, (si, { pressureDrop, frictionShare }) => {
      const half = ductRunPressureDrop.si({ ...si, length: si.length / 2, lossCoefficients: si.lossCoefficients / 2 });
      return [
        [2 * half.pressureDrop, pressureDrop],
        [half.frictionShare, frictionShare],
      ];
    }));

  test("a bore found for a wanted drop gives that drop", () => {
    const run = {
      massFlow: gPerS(36.7),
      pressure: kPa(148),
      temperature: degC(85),
      length: m(1.2),
      lossCoefficients: one(2),
    };
    const bore = solveFor(ductRunPressureDrop, "bore", { pressureDrop: kPa.difference(0.5) }, run);
    expect(agree(ductRunPressureDrop({ ...run, bore }).pressureDrop.si, 500, 1e-9)).toBe(true);
    expect(bore.in(mm)).toBeLessThan(51);
  });
});

describe("compressible-duct-drop", () => {
  const fanno = (mach: number) =>
    (1 - mach ** 2) / (GAMMA * mach ** 2) +
    ((GAMMA + 1) / (2 * GAMMA)) * Math.log(((GAMMA + 1) * mach ** 2) / (2 + (GAMMA - 1) * mach ** 2));

  test("the Fanno coefficients of the two ends differ by the losses", () =>
    always(
      compressibleDuctDrop,
      (si, { inletMach, outletMach }) =>
        outletMach > 0.95 || si.totalCoefficient / fanno(inletMach) < 1e-3
          ? []
          : [[fanno(inletMach) - fanno(outletMach), si.totalCoefficient]],
      1e-8,
    ));

  test("mass and energy are kept: p·M/√T and T·(1 + (gamma - 1)/2·M²) alike at both ends", () =>
    always(compressibleDuctDrop, (si, { outletPressure, outletTemperature, inletMach, outletMach }) => [
      [
        (si.pressure * inletMach) / Math.sqrt(si.temperature),
        (outletPressure * outletMach) / Math.sqrt(outletTemperature),
      ],
      [
        si.temperature * (1 + ((GAMMA - 1) / 2) * inletMach ** 2),
        outletTemperature * (1 + ((GAMMA - 1) / 2) * outletMach ** 2),
      ],
    ]));

  test("momentum: wall friction aside, the outlet is never supersonic and the air always speeds up", () =>
    always(compressibleDuctDrop, (_, { inletMach, outletMach, chokingCoefficient }) => {
      expect(outletMach).toBeGreaterThanOrEqual(inletMach);
      expect(outletMach).toBeLessThanOrEqual(1 + 1e-7);
      return [[chokingCoefficient, fanno(inletMach)]];
    }));

  test("a small drop is the incompressible one; a great one is never less", () =>
    always(compressibleDuctDrop, (si, { pressureDrop }) => {
      const { dynamicPressure } = ductSpeed.si(si);
      const plain = si.totalCoefficient * dynamicPressure;
      expect(pressureDrop).toBeGreaterThan(plain * (1 - 1e-12));
      if (plain / si.pressure > 1e-3) return [];
      expect(agree(pressureDrop, plain, 2e-3 + 3 * (dynamicPressure / si.pressure))).toBe(true);
      return [];
    }));

  test("two runs in a row are one run with both coefficients", () =>
    always(
      compressibleDuctDrop,
      (si, { outletPressure, outletMach }) => {
        if (outletMach > 0.9) return [];
        const first = compressibleDuctDrop.si({ ...si, totalCoefficient: si.totalCoefficient / 3 });
        const second = compressibleDuctDrop.si({
          ...si,
          pressure: first.outletPressure,
          temperature: first.outletTemperature,
          totalCoefficient: (2 * si.totalCoefficient) / 3,
        });
        return [[second.outletPressure, outletPressure]];
      },
      1e-10,
    ));
});

describe("sumDuctRun", () => {
  test("many short pieces tend to the compressible drop of the whole", () => {
    const bore = mm(20);
    const air = { massFlow: gPerS(60), pressure: kPa(148), temperature: degC(85) };
    const pieces = Array.from({ length: 400 }, (_, i) => ({ name: `${i}`, bore, lossCoefficients: one(0.005) }));
    const summed = sumDuctRun({ ...air, pieces }).pressureDrop.si;
    const plain = ductRunPressureDrop({ ...air, bore, length: m(0), lossCoefficients: one(2) }).pressureDrop.si;
    const fanno = compressibleDuctDrop({ ...air, bore, totalCoefficient: one(2) }).pressureDrop.si;
    expect(summed).toBeGreaterThan(plain);
    expect(summed).toBeLessThan(fanno);
  });
});

describe("leak-flow", () => {
  test("is the flow of an opening of that area between the two pressures", () =>
    always(leakFlow, (si, { massFlow, criticalPressure }) => {
      const upstreamPressure = si.barometer + si.gaugePressure;
      if (si.gaugePressure / upstreamPressure < 1e-3) return [];
      const opening = orificeFlow.si({
        upstreamPressure,
        upstreamTemperature: si.temperature,
        downstreamPressure: si.barometer,
        area: (Math.PI * si.holeDiameter ** 2) / 4,
        dischargeCoefficient: si.dischargeCoefficient,
      });
      return [
        [massFlow, opening.massFlow],
        [criticalPressure, opening.criticalPressure],
      ];
    }));

  test("no pressure, no leak; twice the hole, four times the leak", () =>
    always(leakFlow, (si, { massFlow }) => {
      expect(leakFlow.si({ ...si, gaugePressure: 0 }).massFlow).toBe(0);
      return [[leakFlow.si({ ...si, holeDiameter: 2 * si.holeDiameter }).massFlow, 4 * massFlow]];
    }));
});

describe("hose-end-thrust", () => {
  test("= pressure · area, and the friction under the band holds it with the reserve", () =>
    always(hoseEndThrust, (si, { thrust, bandTension }) => [
      [thrust, si.gaugePressure * Math.PI * (si.sealDiameter / 2) ** 2],
      [2 * Math.PI * bandTension * si.frictionCoefficient, si.reserve * thrust],
    ]));

  test("is the pressure part on a bend of 60°, whose resultant equals one end's thrust", () =>
    always(hoseEndThrust, (si, { thrust }) => [
      [bendAnchorForce.si({ ...si, bore: si.sealDiameter, angle: Math.PI / 3, speed: 0, density: 1 }).force, thrust],
    ]));
});

describe("bend-anchor-force", () => {
  test("straight pipe has none; a return bend twice the end thrust and momentum", () =>
    always(bendAnchorForce, (si) => {
      const area = (Math.PI * si.bore ** 2) / 4;
      const back = bendAnchorForce.si({ ...si, angle: Math.PI });
      return [
        [bendAnchorForce.si({ ...si, angle: 0 }).force, 0],
        [back.force, 2 * area * (si.gaugePressure + si.density * si.speed ** 2)],
      ];
    }));

  test("the parts add up, and the momentum part goes with the square of the speed", () =>
    always(bendAnchorForce, (si, { force, pressurePart, momentumPart }) => [
      [force, pressurePart + momentumPart],
      [bendAnchorForce.si({ ...si, speed: 2 * si.speed }).momentumPart, 4 * momentumPart],
    ]));
});

describe("hoop-stress", () => {
  test("hoop = 2 · axial; the wall's force around balances the pressure over the bore", () =>
    always(hoopStress, (si, { hoopStress: hoop, axialStress }) => [
      [hoop, 2 * axialStress],
      [2 * hoop * si.wall, si.gaugePressure * si.diameter],
    ]));

  test("the wall's force along balances the end thrust", () =>
    always(hoopStress, (si, { axialStress }) => [
      [
        axialStress * Math.PI * si.diameter * si.wall,
        hoseEndThrust.si({ gaugePressure: si.gaugePressure, sealDiameter: si.diameter }).thrust,
      ],
    ]));
});
