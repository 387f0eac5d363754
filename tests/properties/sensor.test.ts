// Identities of the sensor relations: what must hold whatever the numbers are.
import { degC, degF, K, kiloohm, mV, ohm, one, second, V } from "@chargewright/quantities";
import {
  type AnyRelation,
  converterResolution,
  converterVoltage,
  dividerResistance,
  laggingTrueValue,
  potentiometerLoading,
  potentiometerPosition,
  pressureResolution,
  ratiometricGaugeSensor,
  ratiometricPressure,
  readInputs,
  sensorRampLag,
  sensorSettlingTime,
  sensorStepResponse,
  sensorTimeConstant,
  steinhartHartResistance,
  steinhartHartTemperature,
  thermistorBeta,
  thermistorBetaResistance,
  thermistorBetaTemperature,
  thermocoupleEmf,
  thermocoupleTemperature,
  thermocoupleTolerance,
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
const kelvin = (celsius: number) => celsius + 273.15;
const emf = (t: number, cold = 0) =>
  thermocoupleEmf.si({ temperature: kelvin(t), coldJunction: kelvin(cold) }).emf * 1000;

describe("thermocouple-emf", () => {
  test("E(T, T) = 0", () => {
    for (let t = -40; t <= 150; t += 0.5) expect(emf(t, t)).toBe(0);
  });

  test("E(T_1, T_2) + E(T_2, T_3) = E(T_1, T_3), the law of intermediate temperatures", () => {
    always(thermocoupleEmf, ({ temperature, coldJunction }) => {
      const middle = 300;
      const split =
        thermocoupleEmf.si({ temperature, coldJunction: middle }).emf +
        thermocoupleEmf.si({ temperature: middle, coldJunction }).emf;
      // Near 1372 °C the terms of the polynomial are two hundred times its sum, and so is their rounding.
      expect(Math.abs(split - thermocoupleEmf.si({ temperature, coldJunction }).emf)).toBeLessThan(1e-14);
    });
  });

  test("E = E(T, 0 °C) - E_cj", () => {
    always(thermocoupleEmf, (si) => {
      const { emf, coldJunctionEmf } = thermocoupleEmf.si(si);
      const whole = thermocoupleEmf.si({ ...si, coldJunction: 273.15 }).emf;
      expect(Math.abs(emf + coldJunctionEmf - whole)).toBeLessThan(1e-11);
    });
  });

  test("dE/dT > 0 from -269 to 1372 °C, and the two ranges meet at 0 °C", () => {
    for (let t = -269; t < 1372; t++) expect(emf(t + 1)).toBeGreaterThan(emf(t));
    expect(Math.abs(emf(1e-9) - emf(-1e-9))).toBeLessThan(1e-8);
  });

  test("the Seebeck coefficient is near 41 µV/°C at room temperature and leaves that by a fifth elsewhere", () => {
    const slope = (t: number) => (emf(t + 0.5) - emf(t - 0.5)) * 1000;
    expect(slope(25)).toBeCloseTo(40.5, 1);
    expect(slope(-100)).toBeCloseTo(30.5, 1);
    expect(slope(1300)).toBeCloseTo(34.9, 1);
  });
});

describe("thermocouple-temperature", () => {
  test("E^-1(E(T)) = T, over both ranges and every cold junction", () => {
    const hot = fc.double({ min: -199.9, max: 1372, noNaN: true });
    fc.assert(
      fc.property(hot, fc.double({ min: -40, max: 150, noNaN: true }), (t, cold) => {
        const { emf } = thermocoupleEmf({ temperature: degC(t), coldJunction: degC(cold) });
        const back = thermocoupleTemperature({ emf, coldJunction: degC(cold) }).temperature.in(degC);
        expect(Math.abs(back - t)).toBeLessThan(1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  test("E(E^-1(E)) = E", () => {
    always(thermocoupleTemperature, (si) => {
      const { temperature } = thermocoupleTemperature.si(si);
      const back = thermocoupleEmf.si({ temperature, coldJunction: si.coldJunction }).emf;
      expect(Math.abs(back - si.emf)).toBeLessThan(2e-14);
    });
  });

  // Approximate inverse polynomials of the same database; coefficients and error limits as published.
  test.each([
    [
      -200,
      0,
      -0.02,
      0.04,
      [0, 25.173462, -1.1662878, -1.0833638, -0.8977354, -0.37342377, -0.086632643, -0.010450598, -5.1920577e-4],
    ],
    [
      0,
      500,
      -0.05,
      0.04,
      [
        0, 25.08355, 0.07860106, -0.2503131, 0.0831527, -0.01228034, 9.804036e-4, -4.41303e-5, 1.057734e-6,
        -1.052755e-8,
      ],
    ],
    [500, 1372, -0.05, 0.06, [-131.8058, 48.30222, -1.646031, 0.05464731, -9.650715e-4, 8.802193e-6, -3.11081e-8]],
  ])(
    "from %d to %d °C the published approximate inverse stays within its published error",
    (from, to, least, most, coefficients) => {
      for (let i = 1; i < 2000; i++) {
        const t = from + (i / 2000) * (to - from);
        const exact = thermocoupleTemperature.si({ emf: emf(t) / 1000, coldJunction: kelvin(0) }).temperature - 273.15;
        const approximate = coefficients.reduceRight((sum, c) => sum * emf(t) + c, 0);
        expect(approximate - exact).toBeGreaterThan(least - 0.005);
        expect(approximate - exact).toBeLessThan(most + 0.005);
      }
    },
  );

  test("temperatures do not add: E^-1(E) + T_cj differs from E^-1(E + E(T_cj)) by up to 2.8 °C", () => {
    let worst = 0;
    for (const cold of [0, 20, 40, 60])
      for (const hot of [100, 300, 600, 900]) {
        const alone =
          thermocoupleTemperature.si({ emf: emf(hot, cold) / 1000, coldJunction: kelvin(0) }).temperature - 273.15;
        worst = Math.max(worst, Math.abs(alone + cold - hot));
      }
    expect(worst).toBeCloseTo(2.79, 2);
  });

  test("refuses below -5.891 mV and above 54.886 mV, whatever the cold junction", () => {
    for (const [millivolts, cold] of [
      [-5.892, 0],
      [54.887, 0],
      [-9.5, 84],
      [56.4, -30],
    ] as const)
      expect(() => thermocoupleTemperature({ emf: mV(millivolts), coldJunction: degC(cold) })).toThrow(
        /-5\.891 to 54\.886 mV|from -12\.1/,
      );
    expect(thermocoupleTemperature({ emf: mV(-5.891), coldJunction: degC(0) }).temperature.in(degC)).toBeCloseTo(
      -199.974,
      3,
    );
    expect(thermocoupleTemperature({ emf: mV(54.886), coldJunction: degC(0) }).temperature.in(degC)).toBeCloseTo(
      1371.989,
      3,
    );
  });
});

describe("thermocouple-tolerance", () => {
  test("the greater of a and b |t|, continuous where they meet", () => {
    const at = (t: number, cls: string) =>
      readInputs(thermocoupleTolerance, { temperature: `${t} °C`, fixedPart: cls, share: cls });
    const tolerance = (t: number, cls: string) => thermocoupleTolerance(at(t, cls)).tolerance.in(degC.difference);
    expect(tolerance(375, "class 1")).toBeCloseTo(1.5, 12);
    expect(tolerance(1000 / 3, "class 2")).toBeCloseTo(2.5, 12);
    for (let t = -40; t < 1000; t += 10) expect(tolerance(t, "class 1")).toBeLessThanOrEqual(tolerance(t, "class 2"));
  });

  test("never below either part, and even in t", () => {
    always(thermocoupleTolerance, (si) => {
      const { tolerance } = thermocoupleTolerance.si(si);
      expect(tolerance).toBeGreaterThanOrEqual(si.fixedPart);
      near(thermocoupleTolerance.si({ ...si, temperature: 2 * 273.15 - si.temperature }).tolerance, tolerance, 1e-12);
    });
  });
});

describe("thermistor-beta-temperature, thermistor-beta-resistance and thermistor-beta", () => {
  test("T(R(T)) = T", () => {
    always(thermistorBetaResistance, (si) => {
      const { resistance } = thermistorBetaResistance.si(si);
      near(thermistorBetaTemperature.si({ ...si, resistance }).temperature, si.temperature, 1e-12);
    });
  });

  test("at R_0 the thermistor is at T_0, whatever Beta", () => {
    always(thermistorBetaTemperature, (si) =>
      near(
        thermistorBetaTemperature.si({ ...si, resistance: si.ratedResistance }).temperature,
        si.ratedTemperature,
        1e-15,
      ),
    );
    always(thermistorBetaResistance, (si) =>
      near(
        thermistorBetaResistance.si({ ...si, temperature: si.ratedTemperature }).resistance,
        si.ratedResistance,
        1e-15,
      ),
    );
  });

  test("Beta from two points of a curve is the curve's Beta", () => {
    always(thermistorBetaResistance, (si) => {
      const warm = { ...si, temperature: si.temperature + 40 };
      const { beta } = thermistorBeta.si({
        coldTemperature: si.temperature,
        coldResistance: thermistorBetaResistance.si(si).resistance,
        warmTemperature: warm.temperature,
        warmResistance: thermistorBetaResistance.si(warm).resistance,
      });
      near(beta, si.beta, 1e-11);
    });
  });

  test("Beta does not depend on the unit of resistance: only the ratio counts", () => {
    always(thermistorBeta, (si) => {
      const scaled = { ...si, coldResistance: 8 * si.coldResistance, warmResistance: 8 * si.warmResistance };
      near(thermistorBeta.si(scaled).beta, thermistorBeta.si(si).beta, 1e-12);
    });
  });

  test("Beta is told in kelvin as data sheets do, whatever the thermometer shows", () => {
    const { beta } = thermistorBeta({
      coldTemperature: degF(77),
      coldResistance: ohm(2200),
      warmTemperature: degF(185),
      warmResistance: ohm(240),
    });
    expect(beta.unit).toBe(K.difference);
  });

  test("dR/dT < 0", () => {
    always(thermistorBetaResistance, (si) =>
      expect(thermistorBetaResistance.si({ ...si, temperature: si.temperature + 1 }).resistance).toBeLessThan(
        thermistorBetaResistance.si(si).resistance,
      ),
    );
  });
});

describe("steinhart-hart-temperature and steinhart-hart-resistance", () => {
  test("T(R(T)) = T", () => {
    always(steinhartHartResistance, (si) => {
      const { resistance } = steinhartHartResistance.si(si);
      near(steinhartHartTemperature.si({ ...si, resistance }).temperature, si.temperature, 1e-12);
    });
  });

  test("R(T(R)) = R", () => {
    always(steinhartHartTemperature, (si) => {
      const { temperature } = steinhartHartTemperature.si(si);
      near(steinhartHartResistance.si({ ...si, temperature }).resistance, si.resistance, 1e-8);
    });
  });

  test("with C towards 0 it is the Beta law with B = 1/b", () => {
    const beta = 3500;
    const at = { ratedResistance: 10000, ratedTemperature: 298.15, beta };
    const linear = 1 / beta;
    const constant = 1 / 298.15 - linear * Math.log(10000);
    for (const resistance of [1000, 5000, 10000, 30000])
      near(
        steinhartHartTemperature.si({ resistance, constant, linear, cubic: 1e-15 }).temperature,
        thermistorBetaTemperature.si({ ...at, resistance }).temperature,
        1e-9,
      );
  });
});

describe("divider-resistance", () => {
  test("V_s R/(R + R_f) = V", () => {
    always(dividerResistance, (si) => {
      const { resistance } = dividerResistance.si(si);
      near((si.supplyVoltage * resistance) / (resistance + si.fixedResistance), si.voltage, 1e-12);
    });
  });

  test("sensor and resistor changed over: R = R_f^2/R with V and V_s - V", () => {
    always(dividerResistance, (si) => {
      const other = dividerResistance.si({ ...si, voltage: si.supplyVoltage - si.voltage }).resistance;
      near(dividerResistance.si(si).resistance * other, si.fixedResistance ** 2, 1e-10);
    });
  });
});

describe("ratiometric sensors", () => {
  test("at f_a V_s the pressure is p_a, at f_b V_s it is p_b", () => {
    always(ratiometricPressure, (si) => {
      near(
        ratiometricPressure.si({ ...si, voltage: si.lowFraction * si.supplyVoltage }).pressure,
        si.lowPressure,
        1e-11,
      );
      near(
        ratiometricPressure.si({ ...si, voltage: si.highFraction * si.supplyVoltage }).pressure,
        si.highPressure,
        1e-12,
      );
    });
  });

  test("V and V_s scaled together change nothing", () => {
    always(ratiometricPressure, (si) => {
      const scaled = { ...si, voltage: si.voltage * 0.7, supplyVoltage: si.supplyVoltage * 0.7 };
      near(ratiometricPressure.si(scaled).pressure, ratiometricPressure.si(si).pressure, 1e-11);
    });
  });

  test("a gauge sensor is an absolute one with its ends raised by the barometer, and follows the barometer one to one", () => {
    always(ratiometricGaugeSensor, (si) => {
      const { pressure } = ratiometricGaugeSensor.si(si);
      const raised = {
        ...si,
        lowPressure: si.lowPressure + si.barometer,
        highPressure: si.highPressure + si.barometer,
      };
      near(ratiometricPressure.si(raised).pressure, pressure, 1e-12);
      near(ratiometricGaugeSensor.si({ ...si, barometer: si.barometer + 1000 }).pressure - pressure, 1000, 1e-7);
    });
  });

  test("a supply taken 2 % too high reads low by 2 % of output over supply", () => {
    const si = { voltage: 2.5, supplyVoltage: 5, lowPressure: 20000, highPressure: 220000 };
    const off = ratiometricPressure.si({ ...si, supplyVoltage: 5.1 }).pressure - ratiometricPressure.si(si).pressure;
    expect(off / 200000).toBeCloseTo((0.5 / 1.02 - 0.5) / 0.8, 12);
  });
});

describe("converters", () => {
  test("V = N q, and the whole scale is 2^n steps", () => {
    always(converterVoltage, (si) => {
      const { voltage, step, fraction } = converterVoltage.si(si);
      near(voltage, si.counts * step, 1e-14);
      near(fraction * si.referenceVoltage, voltage, 1e-14);
      near(step * 2 ** si.bits, si.referenceVoltage, 1e-14);
    });
  });

  test("a bit more halves the step and adds 6.02 dB", () => {
    always(converterResolution, (si) => {
      const more = converterResolution.si({ ...si, bits: si.bits + 1 });
      const { step, noise, signalToNoise } = converterResolution.si(si);
      near(more.step * 2, step, 1e-12);
      near(more.noise * 2, noise, 1e-12);
      near(more.signalToNoise - signalToNoise, 20 * Math.log10(2), 1e-9);
    });
  });

  test("u_q is the standard deviation of rounding, by counting", () => {
    const { step, noise } = converterResolution({ bits: one(8), fullScale: V(1) });
    let squares = 0;
    const parts = 1000;
    for (let i = 0; i < parts; i++) squares += (((i + 0.5) / parts - 0.5) * step.si) ** 2;
    near(Math.sqrt(squares / parts), noise.si, 1e-5);
  });

  test("the step in pressure is what ratiometric-pressure makes of one count more", () => {
    always(pressureResolution, (si) => {
      const { bits, ...ends } = si;
      const counts = 0.5 * 2 ** bits;
      const at = (n: number) => ratiometricPressure.si({ ...ends, voltage: n / 2 ** bits, supplyVoltage: 1 }).pressure;
      const { pressureStep, countsInSpan, rounding } = pressureResolution.si(si);
      expect(Math.abs(at(counts + 1) - at(counts) - pressureStep)).toBeLessThan(1e-14 * 700e3 * 10);
      near(pressureStep * countsInSpan, ends.highPressure - ends.lowPressure, 1e-12);
      near(rounding * Math.sqrt(12), pressureStep, 1e-12);
    });
  });
});

describe("a first-order lag", () => {
  test("sensor-step-response: T_r = x T_f + (1 - x) T_0", () => {
    always(sensorStepResponse, (si) => {
      const { reading, fraction, remaining } = sensorStepResponse.si(si);
      near(reading, fraction * si.finalTemperature + (1 - fraction) * si.startTemperature, 1e-12);
      expect(Math.abs(reading - si.finalTemperature - remaining)).toBeLessThan(1e-9);
    });
  });

  test("sensor-step-response: two waits one after the other are one long wait", () => {
    always(sensorStepResponse, (si) => {
      const half = { ...si, time: si.time / 2 };
      const first = sensorStepResponse.si(half).reading;
      near(
        sensorStepResponse.si({ ...half, startTemperature: first }).reading,
        sensorStepResponse.si(si).reading,
        1e-12,
      );
    });
  });

  test("sensor-time-constant: the fraction is reached at the response time", () => {
    always(sensorTimeConstant, (si) => {
      const { timeConstant } = sensorTimeConstant.si(si);
      const { fraction } = sensorStepResponse.si({
        startTemperature: 300,
        finalTemperature: 400,
        time: si.responseTime,
        timeConstant,
      });
      near(fraction, si.fraction, 1e-12);
    });
  });

  test("sensor-time-constant: t90/t50 = 3.32 and t90/tau = 2.303", () => {
    const tau = (text: string) => sensorTimeConstant.si({ responseTime: 1, fraction: Number(text) }).timeConstant;
    expect(tau("0.5") / tau("0.9")).toBeCloseTo(Math.LN10 / Math.LN2, 12);
    expect(1 / tau("0.9")).toBeCloseTo(Math.LN10, 12);
  });

  test("sensor-settling-time: after it, the allowed error is what remains", () => {
    always(sensorSettlingTime, (si) => {
      const { time, timeConstants } = sensorSettlingTime.si(si);
      near(time, timeConstants * si.timeConstant, 1e-14);
      const { remaining } = sensorStepResponse.si({
        startTemperature: 300,
        finalTemperature: 300 + si.step,
        time,
        timeConstant: si.timeConstant,
      });
      near(-remaining, si.allowedError, 1e-6);
    });
  });

  test("sensor-ramp-lag: a lag of rate times time constant once the start is forgotten", () => {
    always(sensorRampLag, (si) => {
      const { lag, reading, trueTemperature } = sensorRampLag.si({ ...si, time: 60 * si.timeConstant });
      near(lag, si.change / 60, 1e-12);
      expect(Math.abs(trueTemperature - reading - lag)).toBeLessThan(1e-9);
    });
  });

  test("sensor-ramp-lag: obeys tau dT_r/dt = T - T_r", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (part, rate) => {
          const at = (time: number) =>
            sensorRampLag.si({ startTemperature: 400, change: rate * time, time, timeConstant: 10 });
          const time = 10 * part;
          const slope = (at(time + 1e-3).reading - at(time - 1e-3).reading) / 2e-3;
          expect(10 * slope).toBeCloseTo(at(time).lag, 4);
        },
      ),
    );
  });

  test("sensor-ramp-lag: a very quick sensor is not behind, a very slow one has not moved", () => {
    const si = { startTemperature: 400, change: 100, time: 100 };
    expect(sensorRampLag.si({ ...si, timeConstant: 0.001 }).lag).toBeCloseTo(0.001, 9);
    expect(sensorRampLag.si({ ...si, timeConstant: 1e9 }).reading).toBeCloseTo(400, 4);
  });

  test("lagging-true-value: finds what made sensor-step-response read as it did", () => {
    always(sensorStepResponse, (si) => {
      const time = Math.max(Math.min(si.time, 20 * si.timeConstant), 0.05 * si.timeConstant);
      const laterReading = sensorStepResponse.si({ ...si, time }).reading;
      const { trueTemperature } = laggingTrueValue.si({
        earlierReading: si.startTemperature,
        laterReading,
        interval: time,
        timeConstant: si.timeConstant,
      });
      near(trueTemperature, si.finalTemperature, 1e-10);
    });
  });

  test("lagging-true-value: a steady reading is the true value, and noise is at least not lessened", () => {
    always(laggingTrueValue, (si) => {
      const steady = laggingTrueValue.si({ ...si, earlierReading: si.laterReading });
      expect(steady.trueTemperature).toBe(si.laterReading);
      expect(steady.noiseGain).toBeGreaterThanOrEqual(1);
    });
  });

  test("lagging-true-value: the noise gain is what propagation gives for equal ± of the readings", () => {
    const { trueTemperature, noiseGain } = laggingTrueValue({
      earlierReading: degC(540, 1),
      laterReading: degC(565, 1),
      interval: second(3),
      timeConstant: second(6),
    });
    near(trueTemperature.uncertainty, noiseGain.si, 1e-6);
  });

  test("the presets of sheaths: thicker is slower, air slower than water, a welded junction quicker", () => {
    const tau = (timeConstant: string) =>
      readInputs(sensorSettlingTime, { step: "10 °C difference", allowedError: "1 °C difference", timeConstant })
        .timeConstant.si;
    expect(tau("1 mm sheath, in air")).toBeLessThan(tau("3 mm sheath, in air"));
    expect(tau("3 mm sheath, in air")).toBeLessThan(tau("6 mm sheath, in air"));
    expect(tau("3 mm sheath, in water")).toBeLessThan(tau("3 mm sheath, in air"));
    expect(tau("3 mm sheath, junction welded to it, in water")).toBeLessThan(tau("3 mm sheath, in water"));
    expect(tau("6 mm sheath, junction welded to it, in air")).toBeLessThan(tau("6 mm sheath, in air"));
  });
});

describe("potentiometers", () => {
  test("potentiometer-position undoes potentiometer-loading", () => {
    always(potentiometerPosition, (si) => {
      const { fraction, position } = potentiometerPosition.si(si);
      const back = potentiometerLoading.si({
        position: fraction,
        supplyVoltage: si.supplyVoltage,
        trackResistance: si.trackResistance,
        loadResistance: si.loadResistance,
      });
      expect(Math.abs(back.voltage - si.voltage)).toBeLessThan(1e-12 * si.supplyVoltage);
      near(position, fraction * si.travel, 1e-14);
    });
  });

  test("V/V_s + epsilon = x, and both ends are true", () => {
    always(potentiometerLoading, (si) => {
      const { voltage, loadingError } = potentiometerLoading.si(si);
      expect(Math.abs(voltage / si.supplyVoltage + loadingError - si.position)).toBeLessThan(1e-12);
      for (const position of [0, 1]) {
        const end = potentiometerLoading.si({ ...si, position });
        near(end.voltage, position * si.supplyVoltage, 1e-15);
        expect(end.loadingError).toBe(0);
      }
    });
  });

  test("without a load the voltage divides as the track does; the error is worst near two thirds", () => {
    const at = (position: number, loadResistance: number) =>
      potentiometerLoading.si({ position, supplyVoltage: 5, trackResistance: 5000, loadResistance });
    expect(at(0.3, 1e15).voltage).toBeCloseTo(1.5, 9);
    const errors = Array.from({ length: 101 }, (_, i) => at(i / 100, 500000).loadingError);
    expect(errors.indexOf(Math.max(...errors))).toBe(67);
    expect(Math.max(...errors)).toBeCloseTo((4 / 27) * 0.01, 5);
  });

  test("the two ways of the demo sensor agree: 38 °C is 5.77 kΩ and back", () => {
    const part = { constant: "generic 10 kΩ", linear: "generic 10 kΩ", cubic: "generic 10 kΩ" };
    const { resistance } = steinhartHartResistance(
      readInputs(steinhartHartResistance, { temperature: "38 °C", ...part }),
    );
    expect(resistance.in(kiloohm)).toBeCloseTo(5.774, 3);
    const { temperature } = steinhartHartTemperature(
      readInputs(steinhartHartTemperature, { resistance: `${resistance.in(ohm)} Ω`, ...part }),
    );
    expect(temperature.in(degC)).toBeCloseTo(38, 9);
  });
});
