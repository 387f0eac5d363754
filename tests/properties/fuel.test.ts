// Identities of the fuel relations: what must hold whatever the numbers are.
import {
  type AnyRelation,
  airFuelRatio,
  buretteTime,
  carbonDioxidePerDistance,
  carbonDioxidePerVolume,
  consumptionOnReferenceFuel,
  densityFromApiGravity,
  economyFromFuelFlow,
  fuelBlend,
  fuelDensity,
  fuelEnergyPerVolume,
  fuelFlowFromBurette,
  fuelFlowFromEconomy,
  fuelFlowFromStrokeVolume,
  fuelMassFractions,
  fuelPerStroke,
  heatingValueFromDensity,
  lambdaFromExhaustCarbonDioxide,
  lambdaFromExhaustOxygen,
  lowerHeatingValue,
  mixtureStrength,
  readInputs,
  specificFuelConsumption,
  stoichiometricRatio,
  stoichiometricRatioFromMassFractions,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, siOf, validArguments } from "../support/random-inputs.ts";

type Given<R extends { readonly si: (si: never) => unknown }> = Parameters<R["si"]>[0];
/** The kernel's inputs, the optional ones given too. */
type Si<R extends { readonly si: (si: never) => unknown }> = {
  readonly [N in keyof Given<R>]-?: NonNullable<Given<R>[N]>;
};

/** Checks an identity over random valid inputs in SI, all of them given. */
function always<R extends AnyRelation>(relation: R, identity: (si: Si<R>) => void): void {
  fc.assert(
    fc.property(validArguments(relation), (args) => {
      identity(siOf(args) as Si<R>);
    }),
  );
}

function same(a: number, b: number, relative = 1e-12): void {
  expect(agree(a, b, relative), `${a} against ${b}`).toBe(true);
}

describe("fuel-density", () => {
  test("at 15 °C it is the density at 15 °C", () =>
    always(fuelDensity, (si) => {
      const { density, volumeFactor } = fuelDensity.si({ ...si, temperature: 288.15 });
      expect(density).toBe(si.densityAt15);
      expect(volumeFactor).toBe(1);
    }));
  test("ρ V keeps the mass: ρ(T) = ρ_15 f_V", () =>
    always(fuelDensity, (si) => {
      const { density, volumeFactor } = fuelDensity.si(si);
      same(density, si.densityAt15 * volumeFactor);
    }));
  test("warmer is lighter", () =>
    always(fuelDensity, (si) =>
      expect(fuelDensity.si({ ...si, temperature: si.temperature + 1 }).density).toBeLessThan(
        fuelDensity.si(si).density,
      ),
    ));
  test("lighter fuel expands more, and the bands join without a step", () => {
    const expansion = (densityAt15: number) => 1 - fuelDensity.si({ densityAt15, temperature: 289.15 }).volumeFactor;
    for (let rho = 771; rho < 1075; rho += 1) {
      expect(expansion(rho + 1), `${rho}`).toBeLessThan(expansion(rho));
    }
    for (const edge of [787.52245, 838.280954]) same(expansion(edge - 1e-9), expansion(edge), 1e-8);
  });
  test("-dρ/ρ dT at 15 °C is the coefficient of the bands", () => {
    for (const [rho, alpha] of [
      [780, 2680.3206 / 780 ** 2 - 0.00336312],
      [820, 594.5418 / 820 ** 2],
      [860, 186.9696 / 860 ** 2 + 0.4862 / 860],
    ] as const) {
      const at = (rise: number) => fuelDensity.si({ densityAt15: rho, temperature: 288.15 + rise }).density;
      same((at(-0.01) - at(0.01)) / (0.02 * rho), alpha, 1e-6);
    }
  });
});

describe("density-from-api-gravity", () => {
  test("10 degrees API is water", () => {
    const { density, specificGravity } = densityFromApiGravity.si({ apiGravity: 10 });
    same(specificGravity, 1);
    same(density, 999.016);
  });
  test("141.5/d - 131.5 gives the degrees back", () =>
    always(densityFromApiGravity, (si) => {
      const { specificGravity, density } = densityFromApiGravity.si(si);
      expect(Math.abs(141.5 / specificGravity - 131.5 - si.apiGravity)).toBeLessThan(1e-10);
      same(density / specificGravity, 999.016);
    }));
});

describe("heating-value-from-density", () => {
  test("H_v = H_u ρ, and H_u stays below H_o", () =>
    always(heatingValueFromDensity, (si) => {
      const { lowerHeatingValue: lower, higherHeatingValue: higher, lowerPerVolume } = heatingValueFromDensity.si(si);
      same(lowerPerVolume, lower * si.densityAt15);
      expect(lower).toBeLessThan(higher);
    }));
  test("heavier fuel holds less per kilogram and more per litre", () =>
    always(heatingValueFromDensity, (si) => {
      const light = heatingValueFromDensity.si(si);
      const heavy = heatingValueFromDensity.si({ densityAt15: si.densityAt15 + 1 });
      expect(heavy.lowerHeatingValue).toBeLessThan(light.lowerHeatingValue);
      expect(heavy.lowerPerVolume).toBeGreaterThan(light.lowerPerVolume);
    }));
  test("the gap of the two values implies the hydrogen of a diesel fuel", () => {
    for (const densityAt15 of [800, 820, 845, 860]) {
      const { lowerHeatingValue: lower, higherHeatingValue: higher } = heatingValueFromDensity.si({ densityAt15 });
      const hydrogen = (higher - lower) / (2.442e6 * 8.937);
      expect(hydrogen).toBeGreaterThan(0.12);
      expect(hydrogen).toBeLessThan(0.14);
    }
  });
});

describe("lower-heating-value", () => {
  test("without hydrogen both values are the same", () =>
    always(lowerHeatingValue, (si) =>
      expect(lowerHeatingValue.si({ ...si, hydrogenFraction: 0 }).lowerHeatingValue).toBe(si.higherHeatingValue),
    ));
  test("the gap is proportional to the hydrogen", () =>
    always(lowerHeatingValue, (si) => {
      const gap = (hydrogenFraction: number) =>
        si.higherHeatingValue - lowerHeatingValue.si({ ...si, hydrogenFraction }).lowerHeatingValue;
      same(gap(0.2), 2 * gap(0.1), 1e-9);
    }));
});

describe("fuel-energy-per-volume and fuel-blend", () => {
  test("H_v/ρ = H_u, and twice the density holds twice the energy", () =>
    always(fuelEnergyPerVolume, (si) => {
      const { energyPerVolume } = fuelEnergyPerVolume.si(si);
      same(energyPerVolume / si.fuelDensity, si.heatingValue);
      same(fuelEnergyPerVolume.si({ ...si, fuelDensity: 2 * si.fuelDensity }).energyPerVolume, 2 * energyPerVolume);
    }));
  test("nothing added is the base fuel, all of it the added one", () =>
    always(fuelBlend, (si) => {
      const none = fuelBlend.si({ ...si, fraction: 0 });
      expect(none).toEqual({ energyPerVolume: si.baseEnergy, loss: 0, volumeRatio: 1 });
      same(fuelBlend.si({ ...si, fraction: 1 }).energyPerVolume, si.addedEnergy);
    }));
  test("H_v = (1 - Δ) H_1 and r_V H_v = H_1", () =>
    always(fuelBlend, (si) => {
      const { energyPerVolume, loss, volumeRatio } = fuelBlend.si(si);
      same(energyPerVolume, (1 - loss) * si.baseEnergy, 1e-9);
      same(volumeRatio * energyPerVolume, si.baseEnergy);
    }));
  test("blending twice is blending once: a share of x, then of y of the same, is x + y - x y", () =>
    always(fuelBlend, (si) => {
      const first = fuelBlend.si(si).energyPerVolume;
      const twice = fuelBlend.si({ ...si, baseEnergy: first, fraction: 0.25 }).energyPerVolume;
      const once = fuelBlend.si({ ...si, fraction: si.fraction + 0.25 - 0.25 * si.fraction }).energyPerVolume;
      same(twice, once);
    }));
});

describe("consumption-on-reference-fuel", () => {
  test("b_ref H_ref = b H_u: the efficiency stays", () =>
    always(consumptionOnReferenceFuel, (si) => {
      const { referenceConsumption } = consumptionOnReferenceFuel.si(si);
      same(referenceConsumption * si.referenceHeatingValue, si.specificConsumption * si.heatingValue);
    }));
  test("there and back gives the consumption that was measured", () =>
    always(consumptionOnReferenceFuel, (si) => {
      const { referenceConsumption } = consumptionOnReferenceFuel.si(si);
      const back = consumptionOnReferenceFuel.si({
        specificConsumption: referenceConsumption,
        heatingValue: si.referenceHeatingValue,
        referenceHeatingValue: si.heatingValue,
      });
      same(back.referenceConsumption, si.specificConsumption);
    }));
});

describe("fuel flow and its reverses", () => {
  test("economy from the flow from an economy is that economy", () =>
    always(fuelFlowFromEconomy, (si) => {
      const { massFlow, volumeFlow } = fuelFlowFromEconomy.si(si);
      same(economyFromFuelFlow.si({ ...si, fuelMassFlow: massFlow }).economy, si.economy);
      same(volumeFlow * si.economy, si.speed);
    }));
  test("economy: twice the flow at twice the speed is the same", () =>
    always(economyFromFuelFlow, (si) =>
      same(
        economyFromFuelFlow.si({ ...si, fuelMassFlow: 2 * si.fuelMassFlow, speed: 2 * si.speed }).economy,
        economyFromFuelFlow.si(si).economy,
      ),
    ));
  test("burette: time from the flow from a time is that time, and q_m t = ρ V", () =>
    always(fuelFlowFromBurette, (si) => {
      const { massFlow, volumeFlow } = fuelFlowFromBurette.si(si);
      same(buretteTime.si({ ...si, fuelMassFlow: massFlow }).time, si.time);
      same(volumeFlow * si.time, si.volume);
      same(massFlow * si.time, si.fuelDensity * si.volume);
    }));
  test("burette: the time is proportional to the volume and reciprocal to the flow", () =>
    always(buretteTime, (si) =>
      same(
        buretteTime.si({ ...si, volume: 2 * si.volume, fuelMassFlow: 2 * si.fuelMassFlow }).time,
        buretteTime.si(si).time,
      ),
    ));
  test("stroke: volume from the flow from a volume is that volume", () =>
    always(fuelFlowFromStrokeVolume, (si) => {
      const { massFlow, massPerStroke, volumeFlow } = fuelFlowFromStrokeVolume.si(si);
      const back = fuelPerStroke.si({ ...si, fuelMassFlow: massFlow });
      same(back.volumePerStroke, si.volumePerStroke);
      same(back.massPerStroke, massPerStroke);
      same(massFlow, volumeFlow * si.fuelDensity);
    }));
  test("stroke: a two-stroke injects half as much each time for the same flow", () =>
    always(fuelPerStroke, (si) =>
      same(
        2 * fuelPerStroke.si({ ...si, revolutionsPerCycle: 1 }).massPerStroke,
        fuelPerStroke.si({ ...si, revolutionsPerCycle: 2 }).massPerStroke,
      ),
    ));
});

describe("composition and stoichiometric ratio", () => {
  test("the parts of the fuel add up to one", () =>
    always(fuelMassFractions, (si) => {
      const parts = Object.values(fuelMassFractions.si(si));
      same(
        parts.reduce((sum, part) => sum + part, 0),
        1,
      );
    }));
  test("atoms: w_H M_C/(w_C M_H) gives the hydrogen-to-carbon ratio back", () =>
    always(fuelMassFractions, (si) => {
      const { carbon, hydrogen } = fuelMassFractions.si(si);
      same((hydrogen * 12.0107) / (carbon * 1.00794), si.hydrogenToCarbon);
    }));
  test("ratio from atoms and ratio from masses are the same", () =>
    always(stoichiometricRatio, (si) => {
      const { carbon, hydrogen, oxygen } = fuelMassFractions.si({ ...si, sulfurToCarbon: 0, nitrogenToCarbon: 0 });
      const byMass = stoichiometricRatioFromMassFractions.si({
        carbon,
        hydrogen,
        oxygen,
        sulfur: 0,
        oxygenInAir: (0.2095 * 2 * 15.9994) / 28.9647,
      });
      same(byMass.stoichiometricRatio, stoichiometricRatio.si(si).stoichiometricRatio);
    }));
  test("mass balance: oxygen taken up is what carbon dioxide and water hold beyond the fuel", () =>
    always(stoichiometricRatioFromMassFractions, (si) => {
      const { oxygenDemand } = stoichiometricRatioFromMassFractions.si({ ...si, sulfur: 0 });
      const carbonDioxide = (si.carbon * (12.0107 + 2 * 15.9994)) / 12.0107;
      const water = (si.hydrogen * (2 * 1.00794 + 15.9994)) / (2 * 1.00794);
      same(carbonDioxide + water - si.carbon - si.hydrogen - si.oxygen, oxygenDemand, 1e-9);
    }));
  test("the carbon of the fuel is the carbon of its carbon dioxide", () =>
    always(stoichiometricRatio, (si) => {
      const { carbon } = fuelMassFractions.si({ ...si, sulfurToCarbon: 0, nitrogenToCarbon: 0 });
      const { carbonDioxideRatio } = stoichiometricRatio.si(si);
      same((carbonDioxideRatio * 12.0107) / (12.0107 + 2 * 15.9994), carbon);
    }));
  test("pure carbon needs 11.5 and pure hydrogen 34.3 of air", () => {
    const air = { oxygenInAir: 0.2314, oxygen: 0, sulfur: 0 };
    const of = (carbon: number, hydrogen: number) =>
      stoichiometricRatioFromMassFractions.si({ ...air, carbon, hydrogen }).stoichiometricRatio;
    expect(of(1, 0)).toBeCloseTo(11.51, 2);
    expect(of(0, 1)).toBeCloseTo(34.3, 1);
    same(of(0.87, 0.13), 0.87 * of(1, 0) + 0.13 * of(0, 1));
  });
});

describe("mixture", () => {
  test("λ φ = 1, AFR FAR = 1, excess air = λ - 1", () =>
    always(mixtureStrength, (si) => {
      const { lambda, equivalenceRatio, fuelAirRatio, excessAir } = mixtureStrength.si(si);
      same(lambda * equivalenceRatio, 1);
      same(fuelAirRatio * si.airFuelRatio, 1);
      expect(Math.abs(excessAir - (lambda - 1))).toBeLessThan(1e-12 * Math.max(1, lambda));
    }));
  test("air-fuel-ratio and mixture-strength say the same of the same mixture", () =>
    always(airFuelRatio, (si) => {
      const flows = airFuelRatio.si(si);
      const strength = mixtureStrength.si({ airFuelRatio: flows.ratio, stoichiometricRatio: si.stoichiometricRatio });
      same(flows.lambda, strength.lambda);
      same(flows.equivalenceRatio, strength.equivalenceRatio);
    }));
  test("the reading of a complete combustion gives its λ back, by oxygen and by carbon dioxide", () => {
    for (const alpha of [1.7, 1.8, 1.9, 2.1])
      for (const beta of [0, 0.02, 0.1])
        for (const wanted of [1.05, 1.4, 1.7, 2.5, 4, 6]) {
          // Counted for one mole of carbon in dry air of 20.95 % oxygen and 0.04 % carbon dioxide.
          const demand = 1 + alpha / 4 - beta / 2;
          const air = (wanted * demand) / 0.2095;
          const dry = air + 1 - demand;
          const si = { hydrogenToCarbon: alpha, oxygenToCarbon: beta };
          same(lambdaFromExhaustOxygen.si({ ...si, oxygen: ((wanted - 1) * demand) / dry }).lambda, wanted, 1e-11);
          const carbonDioxide = (1 + 0.0004 * air) / dry;
          same(lambdaFromExhaustCarbonDioxide.si({ ...si, carbonDioxide }).lambda, wanted, 1e-11);
        }
  });
  test("λ and AFR of the exhaust stand in the stoichiometric ratio", () => {
    always(lambdaFromExhaustOxygen, (si) => {
      const { lambda, airFuelRatio: ratio } = lambdaFromExhaustOxygen.si(si);
      same(ratio, lambda * stoichiometricRatio.si(si).stoichiometricRatio);
    });
    always(lambdaFromExhaustCarbonDioxide, (si) => {
      const { lambda, airFuelRatio: ratio } = lambdaFromExhaustCarbonDioxide.si(si);
      same(ratio, lambda * stoichiometricRatio.si(si).stoichiometricRatio);
    });
  });
  test("no oxygen left is λ = 1; more oxygen is leaner, more carbon dioxide richer", () => {
    always(lambdaFromExhaustOxygen, (si) => {
      expect(lambdaFromExhaustOxygen.si({ ...si, oxygen: 0 }).lambda).toBe(1);
      expect(lambdaFromExhaustOxygen.si({ ...si, oxygen: si.oxygen + 0.001 }).lambda).toBeGreaterThan(
        lambdaFromExhaustOxygen.si(si).lambda,
      );
    });
    always(lambdaFromExhaustCarbonDioxide, (si) =>
      expect(lambdaFromExhaustCarbonDioxide.si({ ...si, carbonDioxide: si.carbonDioxide + 0.001 }).lambda).toBeLessThan(
        lambdaFromExhaustCarbonDioxide.si(si).lambda,
      ),
    );
  });
});

describe("carbon dioxide", () => {
  test("per volume it is density times carbon dioxide per mass of the composition", () =>
    always(stoichiometricRatio, (si) => {
      const { carbon } = fuelMassFractions.si({ ...si, sulfurToCarbon: 0, nitrogenToCarbon: 0 });
      const { carbonDioxidePerVolume: perVolume } = carbonDioxidePerVolume.si({
        fuelDensity: 832.5,
        carbonFraction: carbon,
        oxidized: 1,
      });
      same(perVolume, 832.5 * stoichiometricRatio.si(si).carbonDioxideRatio);
    }));
  test("per volume it is proportional to the part that is oxidized", () =>
    always(carbonDioxidePerVolume, (si) =>
      same(
        carbonDioxidePerVolume.si({ ...si, oxidized: 0.99 }).carbonDioxidePerVolume,
        0.99 * carbonDioxidePerVolume.si({ ...si, oxidized: 1 }).carbonDioxidePerVolume,
      ),
    ));
  test("c e = c_V: over the distance of one volume of fuel, one volume burns", () =>
    always(carbonDioxidePerDistance, (si) =>
      same(carbonDioxidePerDistance.si(si).carbonDioxide * si.economy, si.carbonDioxidePerVolume),
    ));
  test("per distance it does not depend on the unit of the economy", () => {
    const per = (economy: string) =>
      carbonDioxidePerDistance(readInputs(carbonDioxidePerDistance, { economy })).carbonDioxide.si;
    // 58 miles per imperial gallon of 4.54609 L.
    same(per("58 mpg (imperial)"), per(`${(100 * 4.54609) / (58 * 1.609344)} L/100 km`), 1e-9);
  });
});

test("a whole test: burette and brake give the consumption that flow and power give", () =>
  always(fuelFlowFromBurette, (si) => {
    const { massFlow } = fuelFlowFromBurette.si(si);
    const { specificConsumption } = specificFuelConsumption.si({ fuelMassFlow: massFlow, brakePower: 16e3 });
    same(specificConsumption * 16e3 * si.time, si.fuelDensity * si.volume);
  }));
