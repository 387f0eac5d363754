// Identities of the air relations: what must hold whatever the numbers are.
import {
  absolutePressure,
  actualFlow,
  ChargewrightError,
  degC,
  gPerS,
  K,
  kPa,
  kW,
  litre,
  m3PerS,
  normalM3PerS,
  one,
  Pa,
  rpm,
  standardFlow,
} from "@chargewright/quantities";
import {
  type AnyRelation,
  actualVolumeFlow,
  airConductivity,
  airDensity,
  airEnthalpyRise,
  airHeatCapacity,
  airViscosity,
  altitudeFromBarometer,
  altitudeFuelFactor,
  altitudeMassRatio,
  atmosphericFactor,
  atmosphericFactorTurbocharged,
  barometerFromAltitude,
  boostToRestoreAir,
  chargeHumidity,
  chargeMassRatio,
  densityAltitude,
  dewPoint,
  engineFactor,
  humidAir,
  isentropicTemperature,
  powerCorrection,
  pressureRatio,
  saturationPressure,
  sitePower,
  sitePowerTurbocharged,
  solveFor,
  speedOfSound,
  standardAtmosphere,
  standardVolumeFlow,
  stationPressure,
  stationPressureFromSeaLevel,
  superchargedPowerCorrection,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, siOf, validArguments } from "../support/random-inputs.ts";

/** All inputs of a kernel, those with a default as well. */
type Si<R extends { readonly si: (si: never) => unknown }> = {
  readonly [N in keyof Parameters<R["si"]>[0]]-?: number;
};

/** Checks an identity over random valid inputs in SI, all of them given. */
function always<R extends AnyRelation>(relation: R, identity: (si: Si<R>) => void): void {
  fc.assert(fc.property(validArguments(relation), (args) => identity(siOf(args) as Si<R>)));
}

function same(a: number, b: number, relative = 1e-12): void {
  expect(agree(a, b, relative), `${a} against ${b}`).toBe(true);
}

function near(a: number, b: number, difference: number): void {
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(difference);
}

function codeOf(call: () => unknown): string | undefined {
  try {
    call();
    return undefined;
  } catch (error) {
    if (error instanceof ChargewrightError) return error.code;
    throw error;
  }
}

const T = fc.double({ min: 205, max: 990, noNaN: true });
const R_DRY = 287.05287;

describe("water in the air", () => {
  test("saturation pressure rises with temperature", () => {
    fc.assert(
      fc.property(fc.double({ min: 233.15, max: 380, noNaN: true }), (temperature) => {
        const here = saturationPressure.si({ temperature }).saturationPressure;
        expect(saturationPressure.si({ temperature: temperature + 0.1 }).saturationPressure).toBeGreaterThan(here);
      }),
    );
  });

  test("latent heat from the slope of the saturation pressure is that of water, 2.1 to 2.65 MJ/kg", () => {
    // Clausius and Clapeyron: d ln p / d(1/T) = -L/R_v.
    const ln = (temperature: number) => Math.log(saturationPressure.si({ temperature }).saturationPressure);
    for (let at = 275; at <= 333; at += 2) {
      const slope = (ln(at + 0.01) - ln(at - 0.01)) / (1 / (at + 0.01) - 1 / (at - 0.01));
      // The table value falls by 2.36 kJ/kg per kelvin from 2501 at the freezing point; real vapour is 0.5 % off ideal.
      expect(-slope * 461.5e-3).toBeGreaterThan(0.99 * (2501 - 2.36 * (at - 273.15)));
      expect(-slope * 461.5e-3).toBeLessThan(1.01 * (2501 - 2.36 * (at - 273.15)));
    }
  });

  test("p_d + p_v = p, and w = epsilon p_v/p_d", () => {
    always(humidAir, (si) => {
      const { dryPressure, vapourPressure, humidityRatio } = humidAir.si(si);
      same(dryPressure + vapourPressure, si.pressure);
      if (vapourPressure > 0) same(humidityRatio / (vapourPressure / dryPressure), 18.01528 / 28.96546);
    });
  });

  test("density of humid air by Dalton: dry air plus vapour, each at its own pressure", () => {
    always(humidAir, (si) => {
      const { dryPressure, vapourPressure, density } = humidAir.si(si);
      const vapourConstant = (R_DRY * 28.96546) / 18.01528;
      // 0.378 is rounded from 1 - 0.62196.
      same(density, dryPressure / (R_DRY * si.temperature) + vapourPressure / (vapourConstant * si.temperature), 1e-4);
      expect(density).toBe(airDensity.si(si).density);
    });
  });

  test("air without humidity is dry", () => {
    always(humidAir, (si) => {
      const { moleFraction, dryPressure, humidityRatio } = humidAir.si({ ...si, relativeHumidity: 0 });
      expect([moleFraction, humidityRatio]).toEqual([0, 0]);
      expect(dryPressure).toBe(si.pressure);
    });
  });

  test("air cooled to its dew point is saturated: phi(T_d) = 1", () => {
    always(dewPoint, (si) => {
      const { dewPoint: temperature } = dewPoint.si(si);
      same(
        humidAir.si({ ...si, temperature, relativeHumidity: 1 }).vapourPressure,
        humidAir.si(si).vapourPressure,
        1e-11,
      );
      expect(temperature).toBeLessThanOrEqual(si.temperature);
    });
  });

  test("saturated air is at its dew point", () => {
    always(dewPoint, (si) => same(dewPoint.si({ ...si, relativeHumidity: 1 }).dewPoint, si.temperature));
  });

  test("the charge keeps its relative humidity where neither pressure nor temperature change", () => {
    always(chargeHumidity, (si) => {
      fc.pre(si.ambientTemperature >= 253.15 && si.barometer >= 50e3);
      const unchanged = { ...si, chargePressure: si.barometer, chargeTemperature: si.ambientTemperature };
      const { chargeHumidity: charge } = chargeHumidity.si(unchanged);
      near(charge, si.relativeHumidity, 1e-12);
    });
  });

  test("a charge at its dew point has a relative humidity of 1: two routes to the first drop", () => {
    always(chargeHumidity, (si) => {
      fc.pre(si.relativeHumidity > 0.05);
      const { humidityRatio } = chargeHumidity.si(si);
      const x = humidityRatio / (humidityRatio + 18.01528 / 28.96546);
      const saturated = humidAir.si({ pressure: si.chargePressure, temperature: 333.15, relativeHumidity: 1 });
      fc.pre(x < saturated.moleFraction && x > 0.01 * saturated.moleFraction);
      const { dewPoint: chargeTemperature } = dewPoint.si({
        pressure: si.chargePressure,
        temperature: 333.15,
        relativeHumidity: x / saturated.moleFraction,
      });
      same(chargeHumidity.si({ ...si, chargeTemperature }).chargeHumidity, 1, 1e-10);
    });
  });
});

describe("height and weather", () => {
  const heights = Array.from({ length: 121 }, (_, i) => -1000 + 100 * i);

  test("dp/dH = -g rho: the standard atmosphere carries itself", () => {
    const p = (geopotentialAltitude: number) => standardAtmosphere.si({ geopotentialAltitude }).pressure;
    for (const H of heights.slice(1, -1)) {
      const slope = (p(H + 1) - p(H - 1)) / 2;
      same(slope, -9.80665 * standardAtmosphere.si({ geopotentialAltitude: H }).density, 1e-7);
    }
  });

  test("p = rho R T in the standard atmosphere", () => {
    always(standardAtmosphere, (si) => {
      const { pressure, temperature, density } = standardAtmosphere.si(si);
      same(pressure, density * R_DRY * temperature);
    });
  });

  test("altitude and barometer are inverses of each other, both altitudes", () => {
    for (const altitude of heights.filter((each) => each > -900 && each < 10900)) {
      const { barometer, geopotentialAltitude } = barometerFromAltitude.si({ altitude });
      const back = altitudeFromBarometer.si({ barometer });
      near(back.altitude, altitude, 1e-8);
      near(back.geopotentialAltitude, geopotentialAltitude, 1e-8);
    }
  });

  test("geopotential altitude is less than geometric by Z^2/(r + Z)", () => {
    always(barometerFromAltitude, (si) => {
      const { geopotentialAltitude } = barometerFromAltitude.si(si);
      near(si.altitude - geopotentialAltitude, si.altitude ** 2 / (6356766 + si.altitude), 1e-9);
    });
  });

  test("on a standard day the station pressure is that of the standard atmosphere", () => {
    for (let altitude = -400; altitude <= 6000; altitude += 100)
      same(
        stationPressure.si({ altitude, altimeterSetting: 101325 }).stationPressure,
        standardAtmosphere.si({ geopotentialAltitude: altitude }).pressure,
      );
  });

  test("at sea level the report is right: p_0 = A, no excess", () => {
    always(stationPressure, ({ altimeterSetting }) => {
      const sea = stationPressure.si({ altitude: 0, altimeterSetting });
      expect(sea.stationPressure).toBe(altimeterSetting);
      expect(sea.excessAir === 0).toBe(true);
    });
  });

  test("excess air is that of the densities: rho(A)/rho(p_0) - 1", () => {
    always(stationPressure, (si) => {
      const { stationPressure: here, excessAir } = stationPressure.si(si);
      const density = (pressure: number) => airDensity.si({ pressure, temperature: 290 }).density;
      near(excessAir, density(si.altimeterSetting) / density(here) - 1, 1e-12);
    });
  });

  test("a report taken as it stands counts 23 % too much air at 1700 m and 8 % at 640 m", () => {
    near(stationPressure.si({ altitude: 1700 }).excessAir, 0.23, 0.005);
    near(stationPressure.si({ altitude: 640 }).excessAir, 0.08, 0.005);
  });

  test("both reductions agree where the day is standard: T = 15 °C - 6.5 °C per km", () => {
    for (let altitude = 0; altitude <= 2000; altitude += 50) {
      const { temperature } = standardAtmosphere.si({ geopotentialAltitude: altitude });
      const station = stationPressureFromSeaLevel.si({ seaLevelPressure: 101325, altitude, temperature });
      // A column of its mean temperature against one that cools evenly: the next term of the series is (L h/T)^2/12.
      same(station.stationPressure, stationPressure.si({ altitude }).stationPressure, 5e-5);
    }
  });

  test("a sea-level pressure reduced by no height is the one at the place", () => {
    always(stationPressureFromSeaLevel, (si) => {
      expect(stationPressureFromSeaLevel.si({ ...si, altitude: 0 }).stationPressure).toBe(si.seaLevelPressure);
      const colder = stationPressureFromSeaLevel.si({ ...si, altitude: 500, temperature: si.temperature - 1 });
      const warmer = stationPressureFromSeaLevel.si({ ...si, altitude: 500 });
      expect(colder.stationPressure).toBeLessThan(warmer.stationPressure);
    });
  });

  test("on a standard day density altitude and altitude are one", () => {
    for (const H of heights.filter((each) => each < 9000)) {
      const { pressure, temperature } = standardAtmosphere.si({ geopotentialAltitude: H });
      near(densityAltitude.si({ barometer: pressure, temperature }).densityAltitude, H, 1e-8);
    }
  });

  test("the standard density at the density altitude is the density of the day; heat and damp lift it", () => {
    always(densityAltitude, (si) => {
      const { densityAltitude: H, density } = densityAltitude.si(si);
      fc.pre(H > -6000 && H < 11000);
      same(standardAtmosphere.si({ geopotentialAltitude: H }).density, density, 1e-11);
      expect(densityAltitude.si({ ...si, temperature: si.temperature + 1 }).densityAltitude).toBeGreaterThan(H);
      expect(densityAltitude.si({ ...si, relativeHumidity: 0 }).densityAltitude).toBeLessThanOrEqual(H + 1e-9);
    });
  });
});

describe("gauges", () => {
  test("r = p_2/p_1 with the barometer added as absolutePressure() does", () => {
    fc.assert(
      fc.property(validArguments(pressureRatio), (args) => {
        const { inletGauge, outletGauge, barometer } = args as never as Parameters<typeof pressureRatio>[0];
        const result = pressureRatio({ inletGauge, outletGauge, barometer });
        const [inlet, outlet] = [inletGauge, outletGauge].map((gauge) => absolutePressure(gauge, barometer));
        expect(result.inletPressure.si).toBe(inlet?.si);
        expect(result.outletPressure.si).toBe(outlet?.si);
        same(result.pressureRatio.si * result.inletPressure.si, result.outletPressure.si);
      }),
    );
  });

  test("equal gauges have a ratio of 1; the same boost is a higher ratio at a lower barometer", () => {
    always(pressureRatio, (si) => {
      expect(pressureRatio.si({ ...si, outletGauge: si.inletGauge }).pressureRatio).toBe(1);
      fc.pre(si.outletGauge > si.inletGauge + 1);
      const higher = pressureRatio.si({ ...si, barometer: si.barometer - 1000 }).pressureRatio;
      expect(higher).toBeGreaterThan(pressureRatio.si(si).pressureRatio);
    });
  });
});

describe("volume flows", () => {
  test("the kernel and the conversion of quantities are one: actualFlow(V_n, p, T) and standardFlow(V, p, T)", () => {
    always(actualVolumeFlow, ({ standardFlow: flow, pressure, temperature }) => {
      const at = { pressure: Pa(pressure), temperature: K(temperature) };
      same(
        actualVolumeFlow.si({ standardFlow: flow, pressure, temperature }).actualFlow,
        actualFlow(normalM3PerS(flow), at, m3PerS).si,
      );
      same(
        standardVolumeFlow.si({ actualFlow: flow, pressure, temperature }).standardFlow,
        standardFlow(m3PerS(flow), at, normalM3PerS).si,
      );
    });
  });

  test("mass is kept: rho(p, T) V = q_m, and there and back is the same flow", () => {
    always(actualVolumeFlow, (si) => {
      const { actualFlow: flow, massFlow } = actualVolumeFlow.si(si);
      same(airDensity.si({ pressure: si.pressure, temperature: si.temperature }).density * flow, massFlow);
      const back = standardVolumeFlow.si({ actualFlow: flow, pressure: si.pressure, temperature: si.temperature });
      same(back.standardFlow, si.standardFlow);
      same(back.massFlow, massFlow);
    });
  });
});

describe("air at a temperature", () => {
  test("c_p - c_v = R and gamma = c_p/c_v", () => {
    fc.assert(
      fc.property(T, (temperature) => {
        const { heatCapacity, heatCapacityAtConstantVolume, ratioOfHeats } = airHeatCapacity.si({ temperature });
        same(heatCapacity - heatCapacityAtConstantVolume, 8.31451 / 0.0289651159, 1e-11);
        same(ratioOfHeats * heatCapacityAtConstantVolume, heatCapacity);
      }),
    );
  });

  test("c_p = dh/dT, and the mean heat capacity tends to it", () => {
    fc.assert(
      fc.property(T, (temperature) => {
        const { heatCapacity } = airHeatCapacity.si({ temperature });
        const around = { fromTemperature: temperature - 0.1, toTemperature: temperature + 0.1 };
        same(airEnthalpyRise.si(around).enthalpyRise / 0.2, heatCapacity, 1e-7);
        const equal = airEnthalpyRise.si({ fromTemperature: temperature, toTemperature: temperature });
        same(equal.meanHeatCapacity, heatCapacity);
        expect(equal.enthalpyRise).toBe(0);
      }),
    );
  });

  test("h(T_1, T_2) + h(T_2, T_3) = h(T_1, T_3), and h(T_1, T_2) = -h(T_2, T_1)", () => {
    fc.assert(
      fc.property(T, T, T, (a, b, c) => {
        const rise = (from: number, to: number) =>
          airEnthalpyRise.si({ fromTemperature: from, toTemperature: to }).enthalpyRise;
        near(rise(a, b) + rise(b, c), rise(a, c), 1e-8);
        near(rise(a, b), -rise(b, a), 1e-9);
      }),
    );
  });

  test("the antiderivative with NASA's own constant gives the heat of formation at 298.15 K, and the same rises", () => {
    // h(T) - h(298.15) as evaluated from the antiderivative with its own constants of integration.
    const h = (t: number) =>
      (8.31451 / 0.0289651159) *
      (-10099.5016 / t -
        196.827561 * Math.log(t) +
        5.00915511 * t -
        (0.00576101373 / 2) * t ** 2 +
        (1.06685993e-5 / 3) * t ** 3 -
        (7.94029797e-9 / 4) * t ** 4 +
        (2.18523191e-12 / 5) * t ** 5 -
        176.796731);
    // The heat of formation of the mixture, -125.53 J/mol, is the value of the antiderivative at 298.15 K.
    near(h(298.15) * 0.0289651159, -125.53, 0.001);
    for (let at = 210; at <= 990; at += 20)
      near(airEnthalpyRise.si({ fromTemperature: 298.15, toTemperature: at }).enthalpyRise, h(at) - h(298.15), 0.001);
  });

  test("isentropic steps chain: 1 to r to r s is 1 to r s, and back is the start", () => {
    always(isentropicTemperature, (si) => {
      const to = isentropicTemperature.si(si);
      const middle = Math.sqrt(si.inletPressure * si.outletPressure);
      const half = isentropicTemperature.si({ ...si, outletPressure: middle });
      const rest = isentropicTemperature.si({
        ...si,
        inletTemperature: half.outletTemperature,
        inletPressure: middle,
      });
      same(rest.outletTemperature, to.outletTemperature, 1e-11);
      near(to.outletTemperature - si.inletTemperature, to.temperatureRise, 1e-9);
    });
  });

  test("p v^gamma is constant", () => {
    always(isentropicTemperature, (si) => {
      const { outletTemperature } = isentropicTemperature.si(si);
      const volume = (pressure: number, temperature: number) => temperature / pressure;
      same(
        si.inletPressure * volume(si.inletPressure, si.inletTemperature) ** si.ratioOfHeats,
        si.outletPressure * volume(si.outletPressure, outletTemperature) ** si.ratioOfHeats,
        1e-10,
      );
    });
  });

  test("constant heats are within 0.8 K of variable ones up to a pressure ratio of 3", () => {
    // Entropy of the polynomial: s(T_2) - s(T_1) = R ln(p_2/p_1), by quadrature of c_p/T.
    for (const inletTemperature of [273.15, 288.15, 313.15])
      for (const r of [1.2, 1.5, 2, 2.5, 3]) {
        const { outletTemperature } = isentropicTemperature.si({
          inletTemperature,
          inletPressure: 1e5,
          outletPressure: r * 1e5,
        });
        const steps = 400;
        const width = (outletTemperature - inletTemperature) / steps;
        let entropy = 0;
        for (let i = 0; i < steps; i++) {
          const temperature = inletTemperature + (i + 0.5) * width;
          entropy += (airHeatCapacity.si({ temperature }).heatCapacity / temperature) * width;
        }
        const missing = (8.31451 / 0.0289651159) * Math.log(r) - entropy;
        expect(Math.abs((missing * outletTemperature) / 1005)).toBeLessThan(0.8);
      }
  });

  test("Sutherland: mu (T + S)/T^1.5 is the same at every temperature; air thickens with heat", () => {
    fc.assert(
      fc.property(T, (temperature) => {
        const { viscosity } = airViscosity.si({ temperature });
        same((viscosity * (temperature + 110.4)) / temperature ** 1.5, 1.458e-6);
        expect(airViscosity.si({ temperature: temperature + 1 }).viscosity).toBeGreaterThan(viscosity);
      }),
    );
  });

  test("mu c_p/lambda is the Prandtl number of a gas of two atoms, 0.67 to 0.74, from -60 to 230 °C", () => {
    for (let temperature = 213; temperature <= 503; temperature += 5) {
      const { viscosity } = airViscosity.si({ temperature });
      const { conductivity } = airConductivity.si({ temperature });
      const prandtl = (viscosity * airHeatCapacity.si({ temperature }).heatCapacity) / conductivity;
      expect(prandtl).toBeGreaterThan(0.67);
      expect(prandtl).toBeLessThan(0.74);
      expect(airConductivity.si({ temperature: temperature + 1 }).conductivity).toBeGreaterThan(conductivity);
    }
  });

  test("a^2 rho = gamma p, whatever the pressure", () => {
    always(speedOfSound, ({ temperature, ratioOfHeats }) => {
      const { speedOfSound: a } = speedOfSound.si({ temperature, ratioOfHeats });
      for (const pressure of [5e4, 1e5, 3e5])
        same(a ** 2 * airDensity.si({ pressure, temperature }).density, ratioOfHeats * pressure);
      same(speedOfSound.si({ temperature: 4 * temperature, ratioOfHeats }).speedOfSound, 2 * a);
    });
  });
});

describe("power in other air", () => {
  test("f_a = (99 kPa/p_s) (T/298 K)^0.7, and turbocharged (99 kPa/p_s)^0.7 (T/298 K)^n", () => {
    always(atmosphericFactorTurbocharged, (si) => {
      const { dryPressure } = humidAir.si({
        pressure: si.barometer,
        temperature: si.temperature,
        relativeHumidity: si.relativeHumidity,
      });
      const mechanical = atmosphericFactor.si(si);
      same(mechanical.dryPressure, dryPressure);
      // In logarithms, ten away from zero, where the relative difference means something.
      same(
        Math.log(mechanical.atmosphericFactor) + 10,
        Math.log(99e3 / dryPressure) + 0.7 * Math.log(si.temperature / 298) + 10,
      );
      same(
        Math.log(atmosphericFactorTurbocharged.si(si).atmosphericFactor) + 10,
        0.7 * Math.log(99e3 / dryPressure) + si.temperatureExponent * Math.log(si.temperature / 298) + 10,
      );
    });
  });

  test("a belt-driven blower passes the barometer on in full, a turbocharger to the power 0.7", () => {
    always(atmosphericFactor, (si) => {
      fc.pre(si.barometer < 110e3);
      const dry = { ...si, relativeHumidity: 0 };
      const thin = { ...dry, barometer: si.barometer * 0.97 };
      same(atmosphericFactor.si(thin).atmosphericFactor * 0.97, atmosphericFactor.si(dry).atmosphericFactor);
      same(
        atmosphericFactorTurbocharged.si(thin).atmosphericFactor * 0.97 ** 0.7,
        atmosphericFactorTurbocharged.si(dry).atmosphericFactor,
      );
    });
  });

  test("f_m is continuous at 40 and 65 mg, never outside 0.3 to 1.2, and rises with the fuel", () => {
    const at = (milligrams: number) =>
      engineFactor.si({
        fuelMassFlow: milligrams * 1e-5,
        displacement: 0.001,
        engineSpeed: 20,
        chargePressureRatio: 1,
      }).engineFactor;
    for (const edge of [40, 65]) near(at(edge - 1e-9), at(edge + 1e-9), 1e-9);
    near(at(40), 0.3, 1e-12);
    near(at(65), 1.2, 1e-12);
    always(engineFactor, (si) => {
      const factor = engineFactor.si(si).engineFactor;
      expect(factor).toBeGreaterThanOrEqual(0.3);
      expect(factor).toBeLessThanOrEqual(1.2);
      expect(engineFactor.si({ ...si, fuelMassFlow: 1.1 * si.fuelMassFlow }).engineFactor).toBeGreaterThanOrEqual(
        factor,
      );
    });
  });

  test("q_c r = q, and q V_d n/z = q_f", () => {
    always(engineFactor, (si) => {
      const { fuelPerCycle, correctedFuel } = engineFactor.si(si);
      same(correctedFuel * si.chargePressureRatio, fuelPerCycle);
      same((fuelPerCycle * si.displacement * si.engineSpeed) / si.revolutionsPerCycle, si.fuelMassFlow);
    });
  });

  test("no correction in reference air; corrections there and back cancel", () => {
    always(powerCorrection, (si) => {
      expect(powerCorrection.si({ ...si, atmosphericFactor: 1 }).correctedPower).toBe(si.measuredPower);
      const there = powerCorrection.si(si).correctedPower;
      const back = powerCorrection.si({ ...si, atmosphericFactor: 1 / si.atmosphericFactor, measuredPower: there });
      same(back.correctedPower, si.measuredPower);
    });
  });

  test("one go gives what the three steps give", () => {
    always(superchargedPowerCorrection, (si) => {
      const whole = superchargedPowerCorrection.si(si);
      const air = atmosphericFactor.si(si);
      const engine = engineFactor.si(si);
      const steps = powerCorrection.si({
        atmosphericFactor: air.atmosphericFactor,
        engineFactor: engine.engineFactor,
        measuredPower: si.measuredPower,
      });
      expect(whole).toEqual({
        ...air,
        ...steps,
        engineFactor: engine.engineFactor,
        correctedFuel: engine.correctedFuel,
      });
    });
  });

  test("refuses what the standard refuses: temperature, dry pressure, a correction beyond a tenth", () => {
    const test = {
      barometer: kPa(93.9),
      temperature: degC(18),
      relativeHumidity: one(0.6),
      fuelMassFlow: gPerS(1.5),
      displacement: litre(1.12),
      engineSpeed: rpm(2800),
      chargePressureRatio: one(1.585),
      measuredPower: kW(16),
    };
    expect(codeOf(() => superchargedPowerCorrection(test))).toBeUndefined();
    expect(codeOf(() => superchargedPowerCorrection({ ...test, temperature: K(282.9) }))).toBe("out-of-range");
    expect(codeOf(() => superchargedPowerCorrection({ ...test, temperature: K(313.1) }))).toBe("out-of-range");
    expect(codeOf(() => superchargedPowerCorrection({ ...test, barometer: kPa(80.5) }))).toBe("contradiction");
    expect(codeOf(() => superchargedPowerCorrection({ ...test, barometer: kPa(111), relativeHumidity: one(0) }))).toBe(
      "contradiction",
    );
    // 83 kPa and a hot day at the smoke limit would ask for a fifth.
    const limit = { ...test, fuelMassFlow: gPerS(3), barometer: kPa(83), temperature: degC(35) };
    expect(codeOf(() => superchargedPowerCorrection(limit))).toBe("contradiction");
    expect(
      codeOf(() => powerCorrection({ atmosphericFactor: one(1.2), engineFactor: one(1.2), measuredPower: kW(16) })),
    ).toBe("contradiction");
  });

  test("at the reference conditions a site makes the rated power: k = alpha = beta = 1", () => {
    always(sitePower, ({ ratedPower, mechanicalEfficiency }) => {
      const site = sitePower.si({
        ratedPower,
        mechanicalEfficiency,
        barometer: 99040,
        temperature: 298,
        relativeHumidity: 0,
      });
      same(site.sitePower, ratedPower);
      same(site.consumptionFactor, 1);
      const turbocharged = sitePowerTurbocharged.si({
        ratedPower,
        mechanicalEfficiency,
        barometer: 100e3,
        temperature: 298,
      });
      same(turbocharged.sitePower, ratedPower);
      same(turbocharged.indicatedRatio, 1);
    });
  });

  test("less power is a dearer one: alpha < 1 means beta > 1; without friction alpha = k", () => {
    const held = (site: ReturnType<typeof sitePower.si>, lossless: ReturnType<typeof sitePower.si>) => {
      expect(site.powerFactor < 1).toBe(site.indicatedRatio < 1);
      if (site.powerFactor < 0.9999) expect(site.consumptionFactor).toBeGreaterThanOrEqual(1);
      same(lossless.powerFactor, site.indicatedRatio);
    };
    always(sitePower, (si) => held(sitePower.si(si), sitePower.si({ ...si, mechanicalEfficiency: 1 })));
    always(sitePowerTurbocharged, (si) =>
      held(sitePowerTurbocharged.si(si), sitePowerTurbocharged.si({ ...si, mechanicalEfficiency: 1 })),
    );
  });

  test("thin air costs a turbocharged engine less than one whose blower has a fixed ratio", () => {
    for (let barometer = 62e3; barometer < 95e3; barometer += 3e3) {
      const site = { ratedPower: 16e3, barometer, temperature: 298 };
      expect(sitePowerTurbocharged.si(site).powerFactor).toBeGreaterThan(
        sitePower.si({ ...site, relativeHumidity: 0 }).powerFactor,
      );
    }
  });
});

describe("air left on the hill", () => {
  test("y(a, b) y(b, a) = 1, and a state has its own air", () => {
    always(chargeMassRatio, (si) => {
      const turned = {
        pressure: si.referencePressure,
        temperature: si.referenceTemperature,
        relativeHumidity: si.referenceHumidity,
        referencePressure: si.pressure,
        referenceTemperature: si.temperature,
        referenceHumidity: si.relativeHumidity,
      };
      same(chargeMassRatio.si(si).massRatio * chargeMassRatio.si(turned).massRatio, 1);
      const own = { ...si, referencePressure: si.pressure, referenceTemperature: si.temperature };
      same(chargeMassRatio.si({ ...own, referenceHumidity: si.relativeHumidity }).massRatio, 1);
    });
  });

  test("dry, the mass ratio is the ratio of the densities", () => {
    always(chargeMassRatio, (si) => {
      const { massRatio } = chargeMassRatio.si({ ...si, relativeHumidity: 0, referenceHumidity: 0 });
      const here = airDensity.si({ pressure: si.pressure, temperature: si.temperature }).density;
      const there = airDensity.si({ pressure: si.referencePressure, temperature: si.referenceTemperature }).density;
      same(massRatio, here / there);
    });
  });

  test("on the standard day the altitude ratio is that of the standard densities", () => {
    for (let altitude = 0; altitude <= 6000; altitude += 100) {
      const { standardTemperature, geopotentialAltitude } = barometerFromAltitude.si({ altitude });
      same(
        altitudeMassRatio.si({ altitude, temperature: standardTemperature }).massRatio,
        standardAtmosphere.si({ geopotentialAltitude }).density /
          standardAtmosphere.si({ geopotentialAltitude: 0 }).density,
      );
    }
  });

  test("from 15 °C at sea level to 35 °C at 1500 m a fixed ratio loses 22 % of its air", () => {
    near(altitudeMassRatio.si({ altitude: 1500, temperature: 308.15 }).massRatio, 0.78, 0.005);
    always(altitudeMassRatio, (si) => {
      const own = { ...si, referenceAltitude: si.altitude, referenceTemperature: si.temperature };
      same(altitudeMassRatio.si(own).massRatio, 1);
    });
  });

  test("the rule of practice keeps the mixture within 3 % to 3000 m, and f_q f_lambda = sigma", () => {
    for (let altitude = 0; altitude <= 3000; altitude += 50) {
      const { fuelFactor, mixtureRatio } = altitudeFuelFactor.si({ altitude });
      expect(Math.abs(mixtureRatio - 1)).toBeLessThanOrEqual(0.03);
      const { standardTemperature: temperature } = barometerFromAltitude.si({ altitude });
      same(fuelFactor * mixtureRatio, altitudeMassRatio.si({ altitude, temperature }).massRatio);
    }
  });

  test("no fuel is cut up to 305 m, and no step is made there", () => {
    for (const altitude of [0, 100, 304.999, 305]) expect(altitudeFuelFactor.si({ altitude }).fuelFactor).toBe(1);
    near(altitudeFuelFactor.si({ altitude: 305 + 1e-6 }).fuelFactor, 1, 1e-9);
    near(altitudeFuelFactor.si({ altitude: 1305 }).fuelFactor, 0.9, 1e-12);
  });

  test("restored boost holds the reference air: y(p_2, T_2) = 1/(1 - s)", () => {
    always(boostToRestoreAir, (si) => {
      const { chargePressure, boost } = boostToRestoreAir.si(si);
      const { massRatio } = chargeMassRatio.si({
        pressure: chargePressure,
        temperature: si.chargeTemperature,
        referencePressure: si.referencePressure,
        referenceTemperature: si.referenceTemperature,
      });
      same(massRatio * (1 - si.blowerShare), 1);
      near(boost + si.barometer, chargePressure, 1e-9);
    });
  });

  test("no boost is needed where the place is the reference", () => {
    always(boostToRestoreAir, ({ referencePressure, referenceTemperature }) => {
      const same_ = { referencePressure, referenceTemperature, barometer: referencePressure };
      near(boostToRestoreAir.si({ ...same_, chargeTemperature: referenceTemperature }).boost, 0, 1e-9);
    });
  });

  test("boost asked for, then the place found from it: solveFor undoes the relation", () => {
    const given = {
      referencePressure: kPa(101.325),
      referenceTemperature: degC(15),
      barometer: kPa(93.9),
      blowerShare: one(0.1),
    };
    const { boost } = boostToRestoreAir({ ...given, chargeTemperature: degC(38) });
    same(solveFor(boostToRestoreAir, "chargeTemperature", { boost }, given).si, 311.15, 1e-9);
  });
});
