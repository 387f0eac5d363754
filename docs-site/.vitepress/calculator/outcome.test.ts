import { kgPerM3 } from "@chargewright/quantities";
import { type AnyRelation, airDensity, blowerDischargeTemperature, netDensityGain } from "chargewright";
import { describe, expect, it } from "vitest";
import { compute } from "./outcome.ts";
import { type CalculatorState, exampleState } from "./state.ts";

function typed(relation: AnyRelation, texts: Readonly<Record<string, string>>): CalculatorState {
  const state = exampleState(relation);
  const fields = Object.entries(texts).map(([name, text]) => [
    name,
    { text, plusMinus: "", unit: state.fields[name]?.unit ?? "" },
  ]);
  return { ...state, fields: { ...state.fields, ...Object.fromEntries(fields) } };
}

describe("compute", () => {
  it("gives every output, in the unit chosen for it", () => {
    const { outcome } = compute(airDensity, { ...exampleState(airDensity), shownIn: { density: "lb/ft³" } });
    expect(outcome?.check.outputs.map(({ name }) => name)).toEqual(["density"]);
    expect(outcome?.check.outputs[0]?.text).toMatch(/lb\/ft³$/);
    expect(outcome?.line).toMatch(/lb\/ft³$/);
  });

  it("blames each faulty field and no other", () => {
    const { problems } = compute(airDensity, typed(airDensity, { pressure: "24.7 psi", temperature: "-400" }));
    expect(Object.keys(problems?.fields ?? {})).toEqual(["pressure", "temperature"]);
    expect(problems?.fields.pressure).toMatch(/absolute or gauge/);
    expect(problems?.fields.temperature).toMatch(/-90 to 500 °C/);
  });

  it("blames the field of a contradiction between inputs", () => {
    const { problems } = compute(netDensityGain, typed(netDensityGain, { pressureOut: "150" }));
    expect(problems?.fields.pressureOut).toMatch(/must not rise/);
  });

  it("finds an input, and its check holds what was wanted", () => {
    const state = {
      ...exampleState(airDensity),
      find: "temperature",
      wanted: { output: "density", field: { text: "1.05", plusMinus: "", unit: "kg/m³" } },
    };
    const { outcome } = compute(airDensity, state);
    expect(outcome?.found?.kind).toBe("temperature");
    expect(outcome?.found?.uncertainty).toBeGreaterThan(0);
    expect(outcome?.check.outputs[0]?.quantity.in(kgPerM3)).toBeCloseTo(1.05, 12);
  });

  it("says at the wanted value why nothing is found", () => {
    const find = (text: string) =>
      compute(blowerDischargeTemperature, {
        ...exampleState(blowerDischargeTemperature),
        find: "volumetricEfficiency",
        wanted: { output: "dischargeTemperature", field: { text, plusMinus: "", unit: "°C" } },
      }).problems?.fields.dischargeTemperature;
    expect(find("18")).toMatch(/^no value gives/);
    expect(find("")).toMatch(/^not given/);
    expect(find("warm")).toMatch(/does not start with a number/);
  });
});
