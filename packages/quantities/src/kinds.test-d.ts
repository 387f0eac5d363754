import { describe, expectTypeOf, test } from "vitest";
import {
  absolutePressure,
  actualFlow,
  add,
  bar,
  cfm,
  compare,
  degC,
  degF,
  ftLbf,
  gaugePressure,
  J,
  kg,
  kPa,
  lbfFt,
  Nm,
  normalM3PerH,
  psi,
  type Quantity,
  read,
  scale,
  scfm60F,
  standardFlow,
  subtract,
  type Unit,
  unitsOf,
  write,
} from "./index.ts";

test("a unit makes a quantity of its kind", () => {
  expectTypeOf(psi(24.7)).toEqualTypeOf<Quantity<"absolutePressure">>();
  expectTypeOf(psi.gauge(10)).toEqualTypeOf<Quantity<"gaugePressure">>();
  expectTypeOf(psi.difference(2)).toEqualTypeOf<Quantity<"pressureDifference">>();
  expectTypeOf(degF(180)).toEqualTypeOf<Quantity<"temperature">>();
  expectTypeOf(degF.difference(110)).toEqualTypeOf<Quantity<"temperatureDifference">>();
  expectTypeOf(read("10 psig", "gaugePressure")).toEqualTypeOf<Quantity<"gaugePressure">>();
  expectTypeOf(unitsOf("torque")).toEqualTypeOf<readonly Unit<"torque">[]>();
});

describe("one kind does not pass for another", () => {
  const needs = {
    absolute: (_: Quantity<"absolutePressure">) => {},
    temperature: (_: Quantity<"temperature">) => {},
    energy: (_: Quantity<"energy">) => {},
    standard: (_: Quantity<"standardVolumeFlow">) => {},
  };
  test("but its own does", () => {
    needs.absolute(psi(24.7));
    needs.temperature(degC(38));
    needs.energy(J(1));
    needs.standard(scfm60F(100));
  });
  test("gauge for absolute", () => {
    // @ts-expect-error a gauge pressure is no absolute pressure
    needs.absolute(psi.gauge(10));
    // @ts-expect-error a pressure difference is no absolute pressure
    needs.absolute(psi.difference(10));
    // @ts-expect-error nor is text of a gauge pressure
    needs.absolute(read("10 psig", "gaugePressure"));
    // @ts-expect-error nor a number
    needs.absolute(101325);
  });
  test("difference for temperature", () => {
    // @ts-expect-error a temperature difference is no temperature
    needs.temperature(degC.difference(45));
  });
  test("torque for energy", () => {
    // @ts-expect-error a torque is no energy, though the dimension is the same
    needs.energy(Nm(65));
    // @ts-expect-error
    needs.energy(lbfFt(48));
    needs.energy(ftLbf(48));
  });
  test("actual for standard flow", () => {
    // @ts-expect-error an actual volume flow is no standard volume flow
    needs.standard(cfm(100));
  });
});

test("in, to and write take units of the kind only", () => {
  psi(24.7).in(kPa);
  // The three pressures share their units as measures.
  psi.gauge(10).in(kPa);
  // @ts-expect-error a torque is not counted in joules
  Nm(65).in(J);
  // @ts-expect-error a temperature is not counted in a unit of difference
  degC(38).in(degC.difference);
  // @ts-expect-error nor the other way round
  degC.difference(38).in(degC);
  // @ts-expect-error an actual flow is not counted in standard units
  cfm(100).in(scfm60F);
  // @ts-expect-error
  Nm(65).uncertaintyIn(J);
  // @ts-expect-error a gauge pressure shown as absolute would be another quantity
  psi.gauge(10).to(kPa);
  psi.gauge(10).to(kPa.gauge);
  write(psi.gauge(10), { unit: bar.gauge });
  // @ts-expect-error
  write(psi.gauge(10), { unit: bar });
  // @ts-expect-error there is no such kind
  read("10 psig", "boost");
});

test("arithmetic knows points from differences", () => {
  expectTypeOf(subtract(degF(180), degF(70))).toEqualTypeOf<Quantity<"temperatureDifference">>();
  expectTypeOf(subtract(degF(180), degF.difference(70))).toEqualTypeOf<Quantity<"temperature">>();
  expectTypeOf(subtract(psi(24), psi(14))).toEqualTypeOf<Quantity<"pressureDifference">>();
  expectTypeOf(subtract(psi.gauge(24), psi.gauge(14))).toEqualTypeOf<Quantity<"pressureDifference">>();
  expectTypeOf(subtract(kg(2), kg(1))).toEqualTypeOf<Quantity<"mass">>();
  expectTypeOf(add(degF(180), degF.difference(70))).toEqualTypeOf<Quantity<"temperature">>();
  expectTypeOf(add(degF.difference(70), degF(180))).toEqualTypeOf<Quantity<"temperature">>();
  expectTypeOf(add(degF.difference(70), degF.difference(1))).toEqualTypeOf<Quantity<"temperatureDifference">>();
  expectTypeOf(add(psi.gauge(1), psi.difference(2))).toEqualTypeOf<Quantity<"gaugePressure">>();
  expectTypeOf(add(psi(1), psi.difference(2))).toEqualTypeOf<Quantity<"absolutePressure">>();
  expectTypeOf(scale(degF.difference(70), 2)).toEqualTypeOf<Quantity<"temperatureDifference">>();
  expectTypeOf(scale(psi(10), 2)).toEqualTypeOf<Quantity<"absolutePressure">>();

  // @ts-expect-error two temperatures have no sum
  add(degF(180), degF(70));
  // @ts-expect-error two absolute pressures have no sum
  add(psi(14), psi(10));
  // @ts-expect-error two gauge pressures have no sum
  add(psi.gauge(14), psi.gauge(10));
  // @ts-expect-error absolute and gauge meet in absolutePressure(gauge, barometer)
  add(psi(14), psi.gauge(10));
  // @ts-expect-error torque and energy do not add
  add(Nm(1), J(1));
  // @ts-expect-error a temperature may not be taken from a difference
  subtract(degF.difference(10), degF(70));
  // @ts-expect-error
  subtract(psi(14), psi.gauge(10));
  // @ts-expect-error a temperature does not scale
  scale(degF(180), 2);
  // @ts-expect-error a gauge pressure does not scale
  scale(psi.gauge(10), 2);
  // @ts-expect-error
  compare(psi(14), psi.gauge(10));
  // @ts-expect-error
  compare(cfm(1), scfm60F(1));
});

test("the ways across take their kinds only", () => {
  expectTypeOf(absolutePressure(psi.gauge(10), kPa(84))).toEqualTypeOf<Quantity<"absolutePressure">>();
  expectTypeOf(gaugePressure(psi(24), kPa(84))).toEqualTypeOf<Quantity<"gaugePressure">>();
  const at = { pressure: kPa(100), temperature: degC(20) };
  expectTypeOf(actualFlow(scfm60F(100), at)).toEqualTypeOf<Quantity<"volumeFlow">>();
  expectTypeOf(standardFlow(cfm(100), at, normalM3PerH)).toEqualTypeOf<Quantity<"standardVolumeFlow">>();
  // @ts-expect-error
  absolutePressure(psi(10), kPa(84));
  // @ts-expect-error
  absolutePressure(psi.gauge(10), kPa.gauge(0));
  // @ts-expect-error
  actualFlow(cfm(100), at);
  // @ts-expect-error
  actualFlow(scfm60F(100), { ...at, pressure: kPa.gauge(100) });
  // @ts-expect-error a standard flow has no default reference state
  standardFlow(cfm(100), at);
});
