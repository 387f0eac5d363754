// Identities of the engine relations: what must hold whatever the numbers are.
import { ChargewrightError, gPerS, kW, Quantity } from "@chargewright/quantities";
import {
  type AnyRelation,
  airDensity,
  brakeEfficiency,
  brakePower,
  brakeTorque,
  compressionEndState,
  compressionRatio,
  engineAirFlow,
  engineDisplacement,
  engineVolumetricEfficiency,
  frictionMeanEffectivePressure,
  fuelPower,
  intakePressureForPower,
  meanEffectivePressure,
  meanEffectivePressureFromMixture,
  meanEffectivePressureFromTorque,
  meanPistonSpeed,
  mechanicalEfficiency,
  peakCylinderPressure,
  powerFromMeanEffectivePressure,
  solveFor,
  specificFuelConsumption,
  superchargePowerGain,
  willansFit,
  willansLine,
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

describe("engine-displacement", () => {
  test("V(a D, a s) = a³ V(D, s): a model of half the size has an eighth of the volume", () =>
    always(engineDisplacement, (si) => {
      const half = engineDisplacement.si({ ...si, bore: si.bore / 2, stroke: si.stroke / 2 });
      same(half.displacement, engineDisplacement.si(si).displacement / 8);
    }));
  test("V_d = N V_s, and a square cylinder holds π/4 of its cube", () =>
    always(engineDisplacement, (si) => {
      const { displacement, cylinderVolume } = engineDisplacement.si({ ...si, stroke: si.bore });
      same(displacement, si.cylinders * cylinderVolume);
      same(cylinderVolume, (Math.PI / 4) * si.bore ** 3);
    }));
});

describe("compression-ratio", () => {
  test("(ε - 1) V_c = V_s", () =>
    always(compressionRatio, (si) => {
      const { compressionRatio: epsilon } = compressionRatio.si(si);
      same((epsilon - 1) * si.clearanceVolume, si.cylinderVolume, 1e-9);
    }));
  test("depends on the quotient of the volumes alone, and falls as the clearance grows", () =>
    always(compressionRatio, (si) => {
      const { compressionRatio: epsilon } = compressionRatio.si(si);
      const doubled = { cylinderVolume: 2 * si.cylinderVolume, clearanceVolume: 2 * si.clearanceVolume };
      same(compressionRatio.si(doubled).compressionRatio, epsilon);
      expect(compressionRatio.si({ ...si, clearanceVolume: 1.01 * si.clearanceVolume }).compressionRatio).toBeLessThan(
        epsilon,
      );
    }));
});

describe("mean-piston-speed", () => {
  test("v_m t = 2 s in the time t of a revolution", () =>
    always(meanPistonSpeed, (si) => same(meanPistonSpeed.si(si).pistonSpeed / si.engineSpeed, 2 * si.stroke)));
  test("v_m(s, n) = v_m(2 s, n/2)", () =>
    always(meanPistonSpeed, (si) =>
      same(
        meanPistonSpeed.si({ stroke: 2 * si.stroke, engineSpeed: si.engineSpeed / 2 }).pistonSpeed,
        meanPistonSpeed.si(si).pistonSpeed,
      ),
    ));
});

describe("engine-air-flow", () => {
  test("η_v from the flow gives the η_v that made it", () =>
    always(engineAirFlow, (si) => {
      const { massFlow } = engineAirFlow.si(si);
      const { volumetricEfficiency } = engineVolumetricEfficiency.si({ ...si, airMassFlow: massFlow });
      same(volumetricEfficiency, si.volumetricEfficiency);
    }));
  test("q_m = ρ q_V with the density of dry air", () =>
    always(engineAirFlow, (si) => {
      const { massFlow, volumeFlow, density } = engineAirFlow.si(si);
      same(massFlow, density * volumeFlow);
      same(density, airDensity.si({ pressure: si.intakePressure, temperature: si.intakeTemperature }).density);
    }));
  test("q_m(2 p, 2 T) = q_m(p, T), and a two-stroke takes twice the air of a four-stroke", () =>
    always(engineAirFlow, (si) => {
      const { massFlow } = engineAirFlow.si(si);
      const doubled = { intakePressure: 2 * si.intakePressure, intakeTemperature: 2 * si.intakeTemperature };
      same(engineAirFlow.si({ ...si, ...doubled }).massFlow, massFlow);
      same(
        engineAirFlow.si({ ...si, revolutionsPerCycle: 1 }).massFlow,
        2 * engineAirFlow.si({ ...si, revolutionsPerCycle: 2 }).massFlow,
      );
    }));
  test("without a word on the cycle it is a four-stroke", () =>
    always(engineAirFlow, ({ revolutionsPerCycle: _, ...si }) =>
      expect(engineAirFlow.si(si)).toEqual(engineAirFlow.si({ ...si, revolutionsPerCycle: 2 })),
    ));
});

describe("engine-volumetric-efficiency", () => {
  test("η_v referred to two states stands as the densities, the other way up", () =>
    always(engineVolumetricEfficiency, (si) => {
      const outside = { ...si, intakePressure: si.intakePressure / 2, intakeTemperature: si.intakeTemperature * 0.9 };
      same(
        engineVolumetricEfficiency.si(outside).volumetricEfficiency /
          engineVolumetricEfficiency.si(si).volumetricEfficiency,
        2 * 0.9,
      );
    }));
  test("η_v is proportional to the air and reciprocal to speed and displacement", () =>
    always(engineVolumetricEfficiency, (si) => {
      const { volumetricEfficiency } = engineVolumetricEfficiency.si(si);
      const larger = {
        ...si,
        airMassFlow: 6 * si.airMassFlow,
        displacement: 2 * si.displacement,
        engineSpeed: 3 * si.engineSpeed,
      };
      same(engineVolumetricEfficiency.si(larger).volumetricEfficiency, volumetricEfficiency);
    }));
});

describe("brake-power and brake-torque", () => {
  test("torque from the power from a torque is that torque", () =>
    always(brakePower, (si) => {
      const { brakePower: power } = brakePower.si(si);
      same(brakeTorque.si({ brakePower: power, engineSpeed: si.engineSpeed }).torque, si.torque);
    }));
  test("power from the torque from a power is that power", () =>
    always(brakeTorque, (si) => {
      const { torque } = brakeTorque.si(si);
      same(brakePower.si({ torque, engineSpeed: si.engineSpeed }).brakePower, si.brakePower);
    }));
  test("P t = 2 π M: the work of one revolution", () =>
    always(brakePower, (si) => same(brakePower.si(si).brakePower / si.engineSpeed, 2 * Math.PI * si.torque)));
  test("gearing keeps power: M(P, 2 n) = M(P, n)/2", () =>
    always(brakeTorque, (si) =>
      same(brakeTorque.si({ ...si, engineSpeed: 2 * si.engineSpeed }).torque, brakeTorque.si(si).torque / 2),
    ));
});

describe("the three mean effective pressures", () => {
  test("p_me from power and p_me from its torque are the same", () =>
    always(meanEffectivePressure, (si) => {
      const { meanEffectivePressure: pressure, torque } = meanEffectivePressure.si(si);
      same(meanEffectivePressureFromTorque.si({ ...si, torque }).meanEffectivePressure, pressure);
    }));
  test("power from the p_me from a power is that power", () =>
    always(meanEffectivePressure, (si) => {
      const { meanEffectivePressure: pressure, torque } = meanEffectivePressure.si(si);
      const back = powerFromMeanEffectivePressure.si({ ...si, meanEffectivePressure: pressure });
      same(back.power, si.brakePower);
      same(back.torque, torque);
    }));
  test("p_me V_d is the work of a cycle, P z/n", () =>
    always(powerFromMeanEffectivePressure, (si) => {
      const { power } = powerFromMeanEffectivePressure.si(si);
      same((power * si.revolutionsPerCycle) / si.engineSpeed, si.meanEffectivePressure * si.displacement);
    }));
  test("torque of a mean effective pressure does not depend on speed", () =>
    always(powerFromMeanEffectivePressure, (si) =>
      same(
        powerFromMeanEffectivePressure.si({ ...si, engineSpeed: 3 * si.engineSpeed }).torque,
        powerFromMeanEffectivePressure.si(si).torque,
      ),
    ));
  test("p_me V_d/z is 2 π M", () =>
    always(meanEffectivePressureFromTorque, (si) => {
      const { meanEffectivePressure: pressure } = meanEffectivePressureFromTorque.si(si);
      same((pressure * si.displacement) / si.revolutionsPerCycle, 2 * Math.PI * si.torque);
    }));
  test("p_me from the mixture is that from air flow, fuel flow and efficiency", () =>
    always(meanEffectivePressureFromMixture, (si) => {
      const engine = { displacement: 1.12e-3, engineSpeed: 40, revolutionsPerCycle: 2 };
      const temperature = 300;
      const air = engineAirFlow.si({
        ...engine,
        volumetricEfficiency: si.volumetricEfficiency,
        intakePressure: si.density * 287.05287 * temperature,
        intakeTemperature: temperature,
      });
      const power = (air.massFlow / si.airFuelRatio) * si.heatingValue * si.efficiency;
      same(
        meanEffectivePressureFromMixture.si(si).meanEffectivePressure,
        meanEffectivePressure.si({ ...engine, brakePower: power }).meanEffectivePressure,
      );
    }));
  test("p_me is proportional to the density and falls with the air-fuel ratio", () =>
    always(meanEffectivePressureFromMixture, (si) => {
      const { meanEffectivePressure: pressure } = meanEffectivePressureFromMixture.si(si);
      const richer = { ...si, density: si.density / 2, airFuelRatio: si.airFuelRatio / 2 };
      same(meanEffectivePressureFromMixture.si(richer).meanEffectivePressure, pressure);
    }));
});

describe("mechanical-efficiency", () => {
  test("P_i = P_e + P_r and η_m P_i = P_e", () =>
    always(mechanicalEfficiency, (si) => {
      const { indicatedPower, mechanicalEfficiency: efficiency } = mechanicalEfficiency.si(si);
      same(indicatedPower - si.frictionPower, si.brakePower, 1e-6);
      same(efficiency * indicatedPower, si.brakePower);
    }));
  test("1 without friction, below 1 with it, never above", () =>
    always(mechanicalEfficiency, (si) => {
      expect(mechanicalEfficiency.si({ ...si, frictionPower: 0 }).mechanicalEfficiency).toBe(1);
      expect(mechanicalEfficiency.si(si).mechanicalEfficiency).toBeLessThanOrEqual(1);
    }));
});

describe("friction-mean-effective-pressure", () => {
  test("the chamber's constant and the accessories add, nothing else changes", () =>
    always(frictionMeanEffectivePressure, (si) => {
      const whole = frictionMeanEffectivePressure.si(si).frictionMeanEffectivePressure;
      const bare = frictionMeanEffectivePressure.si({ ...si, accessories: 0 }).frictionMeanEffectivePressure;
      same(whole, bare + si.accessories);
      const { pistonSpeed } = meanPistonSpeed.si(si);
      same(bare - si.chamberConstant, 2880 * si.engineSpeed + 400 * pistonSpeed ** 2, 1e-9);
    }));
  test("rises with speed and with stroke", () =>
    always(frictionMeanEffectivePressure, (si) => {
      const { frictionMeanEffectivePressure: pressure } = frictionMeanEffectivePressure.si(si);
      const faster = frictionMeanEffectivePressure.si({ ...si, engineSpeed: 1.01 * si.engineSpeed });
      const longer = frictionMeanEffectivePressure.si({ ...si, stroke: 1.01 * si.stroke });
      expect(faster.frictionMeanEffectivePressure).toBeGreaterThan(pressure);
      expect(longer.frictionMeanEffectivePressure).toBeGreaterThan(pressure);
    }));
});

describe("willans-line", () => {
  test("the line passes through both loads and through minus the friction power at zero fuel", () =>
    always(willansLine, (si) => {
      const { frictionPower, noLoadFuelFlow, marginalConsumption } = willansLine.si(si);
      same(noLoadFuelFlow + marginalConsumption * si.highPower, si.highFuelFlow, 1e-9);
      same(marginalConsumption * (si.lowPower + frictionPower), si.lowFuelFlow, 1e-9);
    }));
  test("undoes fuel-power: friction and slope come back as they went in", () =>
    always(fuelPower, (si) => {
      const at = (power: number) => fuelPower.si({ ...si, brakePower: power, blowerPower: 0 }).fuelMassFlow;
      const friction = powerFromMeanEffectivePressure.si({
        ...si,
        meanEffectivePressure: si.frictionMeanEffectivePressure,
      }).power;
      const line = willansLine.si({
        ...si,
        lowPower: friction,
        lowFuelFlow: at(friction),
        highPower: 3 * friction,
        highFuelFlow: at(3 * friction),
      });
      same(line.frictionMeanEffectivePressure, si.frictionMeanEffectivePressure, 1e-9);
      same(line.frictionPower, friction, 1e-9);
      same(line.marginalEfficiency, si.indicatedEfficiency, 1e-9);
    }));
  test("two loads fitted with a third on their line give what the two give", () =>
    always(willansLine, (si) => {
      const two = willansLine.si(si);
      const middle = (si.lowPower + si.highPower) / 2;
      const point = (power: number, flow: number) => ({
        brakePower: kW(power / 1000),
        fuelMassFlow: gPerS(flow * 1000),
      });
      const fit = willansFit([
        point(si.lowPower, si.lowFuelFlow),
        point(middle, (si.lowFuelFlow + si.highFuelFlow) / 2),
        point(si.highPower, si.highFuelFlow),
      ]);
      same(fit.marginalConsumption.si, two.marginalConsumption, 1e-7);
      same(fit.noLoadFuelFlow.si, two.noLoadFuelFlow, 1e-7);
      same(fit.frictionPower.si, two.frictionPower, 1e-7);
      expect(fit.scatter.si).toBeLessThan(1e-9 * si.highFuelFlow);
    }));
});

describe("fuel-power", () => {
  test("energy: q_f H_u η_i = P_e + P_r + P_b", () =>
    always(fuelPower, (si) => {
      const { fuelMassFlow, indicatedPower } = fuelPower.si(si);
      const friction = powerFromMeanEffectivePressure.si({
        ...si,
        meanEffectivePressure: si.frictionMeanEffectivePressure,
      }).power;
      same(fuelMassFlow * si.heatingValue * si.indicatedEfficiency, si.brakePower + friction + si.blowerPower);
      same(indicatedPower, si.brakePower + friction + si.blowerPower);
    }));
  test("η_e = η_m η_i", () =>
    always(fuelPower, (si) => {
      const { brakeEfficiency: efficiency, mechanicalEfficiency: mechanical } = fuelPower.si(si);
      same(efficiency, mechanical * si.indicatedEfficiency);
    }));
  test("one more watt of blower costs the same fuel as one more watt of brake", () =>
    always(fuelPower, (si) =>
      same(
        fuelPower.si({ ...si, blowerPower: si.blowerPower + 500 }).fuelMassFlow,
        fuelPower.si({ ...si, brakePower: si.brakePower + 500 }).fuelMassFlow,
      ),
    ));
});

describe("brake-efficiency and specific-fuel-consumption", () => {
  test("η_e b_e H_u = 1", () =>
    always(brakeEfficiency, (si) =>
      same(brakeEfficiency.si(si).brakeEfficiency * si.specificConsumption * si.heatingValue, 1),
    ));
  test("η_e q_f H_u = P_e", () =>
    always(specificFuelConsumption, (si) => {
      const { brakeEfficiency: efficiency, specificConsumption } = specificFuelConsumption.si(si);
      same(efficiency * si.fuelMassFlow * si.heatingValue, si.brakePower);
      same(efficiency, brakeEfficiency.si({ specificConsumption, heatingValue: si.heatingValue }).brakeEfficiency);
    }));
  test("b_e does not change with the size of the engine: b_e(2 q_f, 2 P_e) = b_e(q_f, P_e)", () =>
    always(specificFuelConsumption, (si) =>
      same(
        specificFuelConsumption.si({ ...si, fuelMassFlow: 2 * si.fuelMassFlow, brakePower: 2 * si.brakePower })
          .specificConsumption,
        specificFuelConsumption.si(si).specificConsumption,
      ),
    ));
  test("twice the consumption is half the efficiency", () =>
    always(brakeEfficiency, (si) =>
      same(
        2 * brakeEfficiency.si({ ...si, specificConsumption: 2 * si.specificConsumption }).brakeEfficiency,
        brakeEfficiency.si(si).brakeEfficiency,
      ),
    ));
});

describe("compression-end-state", () => {
  test("gas law: p_2/T_2 = ε p_1/T_1", () =>
    always(compressionEndState, (si) => {
      const { pressure, temperature } = compressionEndState.si(si);
      same(pressure / temperature, (si.compressionRatio * si.intakePressure) / si.intakeTemperature);
    }));
  test("compressing in two steps is compressing once: ε = ε_1 ε_2", () =>
    always(compressionEndState, (si) => {
      const once = compressionEndState.si(si);
      const half = compressionEndState.si({ ...si, compressionRatio: Math.sqrt(si.compressionRatio) });
      const twice = compressionEndState.si({
        ...si,
        intakePressure: half.pressure,
        intakeTemperature: half.temperature,
        compressionRatio: Math.sqrt(si.compressionRatio),
      });
      same(twice.pressure, once.pressure);
      same(twice.temperature, once.temperature);
    }));
  test("T_2/T_1 = (p_2/p_1)^((k - 1)/k)", () =>
    always(compressionEndState, (si) => {
      const { pressure, temperature } = compressionEndState.si(si);
      const k = si.polytropicExponent;
      same(temperature / si.intakeTemperature, (pressure / si.intakePressure) ** ((k - 1) / k));
    }));
});

describe("peak-cylinder-pressure", () => {
  test("without boost it is the unboosted peak, whatever the exponent", () =>
    always(peakCylinderPressure, (si) => {
      const unboosted = peakCylinderPressure.si({ ...si, intakePressure: si.unboostedIntakePressure });
      expect(unboosted.peakPressure).toBe(si.unboostedPeakPressure);
    }));
  test("boost in two steps is boost at once", () =>
    always(peakCylinderPressure, (si) => {
      const middle = Math.sqrt(si.intakePressure * si.unboostedIntakePressure);
      const first = peakCylinderPressure.si({ ...si, intakePressure: middle });
      const second = peakCylinderPressure.si({
        ...si,
        unboostedIntakePressure: middle,
        unboostedPeakPressure: first.peakPressure,
      });
      same(second.peakPressure, peakCylinderPressure.si(si).peakPressure);
    }));
  test("never falls as boost rises", () =>
    always(peakCylinderPressure, (si) =>
      expect(
        peakCylinderPressure.si({ ...si, intakePressure: 1.1 * si.intakePressure }).peakPressure,
      ).toBeGreaterThanOrEqual(peakCylinderPressure.si(si).peakPressure),
    ));
  test("assumed values lie at the cautious end", () => {
    const given = { intakePressure: 139e3, unboostedIntakePressure: 98e3 };
    const assumed = peakCylinderPressure.si(given).peakPressure;
    for (const { value } of Object.values(peakCylinderPressure.inputs.unboostedPeakPressure.presets))
      expect(
        peakCylinderPressure.si({ ...given, unboostedPeakPressure: value * 1e5 }).peakPressure,
      ).toBeLessThanOrEqual(assumed);
  });
});

describe("supercharge-power-gain", () => {
  test("a blower that does nothing changes nothing", () =>
    always(superchargePowerGain, (si) => {
      const idle = superchargePowerGain.si({
        ...si,
        intakePressure: si.ambientPressure,
        intakeTemperature: si.ambientTemperature,
        boostedVolumetricEfficiency: si.naturalVolumetricEfficiency,
        blowerPower: 0,
      });
      same(idle.boostedPower, idle.naturalPower);
      same(idle.powerRatio, 1);
    }));
  test("the induced air is what engine-air-flow swallows", () =>
    always(superchargePowerGain, (si) => {
      const { overallVolumetricEfficiency } = superchargePowerGain.si(si);
      const at = {
        displacement: si.displacement,
        engineSpeed: si.engineSpeed,
        revolutionsPerCycle: si.revolutionsPerCycle,
      };
      const behind = engineAirFlow.si({ ...at, ...si, volumetricEfficiency: si.boostedVolumetricEfficiency });
      const outside = engineAirFlow.si({
        ...at,
        volumetricEfficiency: overallVolumetricEfficiency,
        intakePressure: si.ambientPressure,
        intakeTemperature: si.ambientTemperature,
      });
      same(outside.massFlow, behind.massFlow);
    }));
  test("cooling the charge raises the power, the blower's drive lowers it by itself", () =>
    always(superchargePowerGain, (si) => {
      const { boostedPower } = superchargePowerGain.si(si);
      const cooler = superchargePowerGain.si({ ...si, intakeTemperature: 0.98 * si.intakeTemperature });
      expect(cooler.boostedPower).toBeGreaterThan(boostedPower);
      same(superchargePowerGain.si({ ...si, blowerPower: 0 }).boostedPower - si.blowerPower, boostedPower, 1e-9);
    }));
});

describe("intake-pressure-for-power", () => {
  test("the engine swallows at that pressure the air that was asked for", () =>
    always(intakePressureForPower, (si) => {
      const { intakePressure, airMassFlow, fuelMassFlow } = intakePressureForPower.si(si);
      same(engineAirFlow.si({ ...si, intakePressure }).massFlow, airMassFlow);
      same(airMassFlow / fuelMassFlow, si.airFuelRatio);
    }));
  test("p is proportional to the absolute temperature and to the power made", () =>
    always(intakePressureForPower, (si) => {
      const { intakePressure } = intakePressureForPower.si(si);
      const hotter = { ...si, intakeTemperature: 1.1 * si.intakeTemperature };
      same(intakePressureForPower.si(hotter).intakePressure, 1.1 * intakePressure);
      const twice = { ...si, brakePower: 2 * si.brakePower, blowerPower: 2 * si.blowerPower };
      same(intakePressureForPower.si(twice).intakePressure, 2 * intakePressure);
    }));
});

test("inverses by search: displacement from a wanted air flow", () => {
  const given = { engineSpeed: 40, volumetricEfficiency: 0.9, intakePressure: 139e3, intakeTemperature: 311.15 };
  const { massFlow } = engineAirFlow.si({ ...given, displacement: 1.12e-3 });
  const quantities = Object.fromEntries(
    Object.entries(given).map(([name, si]) => {
      const { unit } = engineAirFlow.inputs[name as keyof typeof given];
      return [name, new Quantity(unit.kind, si, unit, 0, undefined, undefined)];
    }),
  );
  const found = solveFor(engineAirFlow, "displacement", { massFlow: gPerS(massFlow * 1000) }, quantities as never);
  same(found.si, 1.12e-3, 1e-9);
});

test("willans-line refuses loads that leave no friction", () => {
  const call = () =>
    willansLine({
      lowPower: kW(5),
      lowFuelFlow: gPerS(0.4),
      highPower: kW(15),
      highFuelFlow: gPerS(1.4),
      displacement: engineAirFlow.inputs.displacement.unit(1.12),
      engineSpeed: engineAirFlow.inputs.engineSpeed.unit(2800),
    });
  expect(call).toThrow(ChargewrightError);
  expect(call).toThrow(expect.objectContaining({ code: "contradiction" }));
});
