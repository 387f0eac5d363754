// The packed tarballs, installed into an empty project: what a user gets.
import { execFileSync } from "node:child_process";
import { existsSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { relations } from "chargewright/registry";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { evaluateIn, installPacked } from "../support/packed.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
let folder = "";
beforeAll(() => {
  folder = installPacked();
}, 180_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("every relation answers its example through readInputs, and is exported by name and by subject", () => {
  const answers = evaluateIn(
    folder,
    `import { relations } from "chargewright/registry";
     import * as whole from "chargewright";
     const answers = {};
     for (const [id, relation] of relations) {
       const texts = Object.fromEntries(Object.entries(relation.inputs).map(([name, { example }]) => [name, example]));
       const results = relation(whole.readInputs(relation, texts));
       const subject = await import("chargewright/" + relation.subject);
       answers[id] = {
         finite: Object.values(results).every(({ si }) => Number.isFinite(si)),
         named: Object.values(whole).includes(relation),
         inSubject: Object.values(subject).includes(relation),
       };
     }
     console.log(JSON.stringify(answers));`,
  ) as Record<string, Record<string, boolean>>;
  expect(Object.keys(answers).sort()).toEqual([...relations.keys()].sort());
  for (const [id, answer] of Object.entries(answers))
    expect(answer, id).toEqual({ finite: true, named: true, inSubject: true });
});

test("the typed calls of the core relations answer", () => {
  const answer = evaluateIn(
    folder,
    `import { airDensity, blowerFlow, blowerDischargeTemperature, coolerEffectiveness, netDensityGain, pressureDropLimit,
       fuelFlowFromEconomy, airFuelRatio, smokeLimitedFuel } from "chargewright";
     import { kPa, degC, litrePerRev, rpm, one, mpgImperial, mph, kgPerM3, gPerS, kW } from "@chargewright/quantities";
     const { density } = airDensity({ pressure: kPa(84), temperature: degC(38) });
     const flow = blowerFlow({ displacement: litrePerRev(0.62), engineSpeed: rpm(2800), driveRatio: one(1.45), volumetricEfficiency: one(0.78), inletDensity: density });
     const hot = blowerDischargeTemperature({ inletTemperature: degC(38), inletPressure: kPa(84), dischargePressure: kPa(130), volumetricEfficiency: one(0.78) });
     const cooler = coolerEffectiveness({ chargeIn: hot.dischargeTemperature, chargeOut: degC(60), coolantIn: degC(38) });
     const gain = netDensityGain({ pressureIn: kPa(130), temperatureIn: hot.dischargeTemperature, pressureOut: kPa(122), temperatureOut: degC(60) });
     const limit = pressureDropLimit({ pressureIn: kPa(130), temperatureIn: hot.dischargeTemperature, temperatureOut: degC(60), densityRatioWanted: one(1) });
     const fuel = fuelFlowFromEconomy({ economy: mpgImperial(58), speed: mph(50), fuelDensity: kgPerM3(832.5) });
     const ratio = airFuelRatio({ airMassFlow: flow.massFlow, fuelMassFlow: fuel.massFlow, stoichiometricRatio: one(14.5) });
     const smoke = smokeLimitedFuel({ airMassFlow: flow.massFlow, smokeLimitRatio: one(20.7) });
     console.log(JSON.stringify({
       density: density.in(kgPerM3), massFlow: flow.massFlow.in(gPerS), hot: hot.dischargeTemperature.in(degC), effectiveness: cooler.effectiveness.si,
       net: gain.densityRatio.si - (1 + gain.gainFromCooling.si) * (1 - gain.lossFromPressure.si), drop: limit.largestDrop.si - gain.breakEvenDrop.si,
       lambda: ratio.lambda.si * ratio.equivalenceRatio.si, power: smoke.power.in(kW) }));`,
  ) as Record<string, number>;
  expect(answer.density).toBeCloseTo(0.9405, 4);
  expect(answer.net).toBeCloseTo(0, 12);
  expect(answer.drop).toBeCloseTo(0, 6);
  expect(answer.lambda).toBeCloseTo(1, 12);
  for (const name of ["massFlow", "hot", "effectiveness", "power"]) expect(answer[name]).toBeGreaterThan(0);
});

describe("bad input throws an error with a code that names input, value, range and unit", () => {
  const air = (texts: string) => `readInputs(relations.get("air-density"), ${texts})`;
  const flow = (speed: string) =>
    `readInputs(relations.get("blower-flow"), { displacement: "0.62 L/rev", engineSpeed: ${speed}, driveRatio: "1.45", volumetricEfficiency: "0.78", inletDensity: "1.1 kg/m3" })`;
  const cases: [title: string, code: string, expectedCode: string, input: string, said: string[]][] = [
    [
      "gauge for absolute, as text",
      air(`{ pressure: "10 psi gauge", temperature: "20 °C" }`),
      "wrong-kind",
      "pressure",
      ["10 psi gauge", "2000", "kPa absolute"],
    ],
    [
      "gauge for absolute, typed",
      `airDensity({ pressure: psi.gauge(10), temperature: degC(20) })`,
      "wrong-kind",
      "pressure",
      ["10 psi gauge", "2000", "kPa absolute"],
    ],
    [
      "difference for temperature, as text",
      air(`{ pressure: "84 kPa absolute", temperature: "20 °C difference" }`),
      "wrong-kind",
      "temperature",
      ["20 °C difference", "500", "°C"],
    ],
    [
      "difference for temperature, typed",
      `airDensity({ pressure: kPa(84), temperature: degF.difference(20) })`,
      "wrong-kind",
      "temperature",
      ["20 °F difference", "500", "°C"],
    ],
    [
      "bare psi",
      air(`{ pressure: "24.7 psi", temperature: "20 °C" }`),
      "ambiguous",
      "pressure",
      ["24.7 psi", "absolute", "gauge", "2000"],
    ],
    [
      "0 K",
      air(`{ pressure: "84 kPa absolute", temperature: "0 K" }`),
      "out-of-range",
      "temperature",
      ["0 K", "183.15", "773.15"],
    ],
    [
      "0 K, typed",
      `airDensity({ pressure: kPa(84), temperature: K(0) })`,
      "out-of-range",
      "temperature",
      ["0 K", "183.15", "773.15"],
    ],
    ["negative speed", flow(`"-100 rpm"`), "out-of-range", "engineSpeed", ["-100 rpm", "20000"]],
    [
      "NaN as text",
      air(`{ pressure: "NaN kPa absolute", temperature: "20 °C" }`),
      "unreadable",
      "pressure",
      ["NaN kPa absolute", "2000", "kPa absolute"],
    ],
    [
      "NaN as a number",
      `airDensity({ pressure: NaN, temperature: degC(20) })`,
      "not-a-number",
      "pressure",
      ["NaN", "2000", "kPa absolute"],
    ],
    [
      "unknown unit",
      air(`{ pressure: "84 kPz absolute", temperature: "20 °C" }`),
      "unknown-unit",
      "pressure",
      ["kPz", "84 kPz absolute", "2000", "kPa absolute"],
    ],
    ["missing, as text", air(`{ pressure: "84 kPa absolute" }`), "missing-input", "temperature", ["500", "°C"]],
    ["missing, typed", `airDensity({ pressure: kPa(84) })`, "missing-input", "temperature", ["500", "°C"]],
  ];
  test.each(cases)("%s", (_, code, expectedCode, input, said) => {
    const error = evaluateIn(
      folder,
      `import { airDensity, readInputs } from "chargewright";
       import { relations } from "chargewright/registry";
       import { psi, kPa, K, degC, degF, ChargewrightError } from "@chargewright/quantities";
       let caught;
       try { ${code}; } catch (error) { caught = error; }
       console.log(JSON.stringify({ ours: caught instanceof ChargewrightError, code: caught?.code, input: caught?.input, range: caught?.range, unit: caught?.unit, message: caught?.message, help: caught?.help }));`,
    ) as Record<string, string>;
    expect(error).toMatchObject({ ours: true, code: expectedCode, input });
    expect(error.message).toContain(input);
    for (const part of said) expect(error.message).toContain(part);
    expect(error.range).toBeTruthy();
    expect(error.help).toBe(`errors#${expectedCode}`);
  });

  test("a pressure difference needs no qualifier", () => {
    const drop = evaluateIn(
      folder,
      `import { readInputs } from "chargewright"; import { relations } from "chargewright/registry";
       const r = relations.get("blower-discharge-temperature");
       const args = readInputs(r, { inletTemperature: "20 °C", inletPressure: "93 kPa absolute", dischargePressure: "148 kPa absolute", volumetricEfficiency: "0.78", lossPressure: "1 psi" });
       console.log(JSON.stringify(args.lossPressure.si));`,
    );
    expect(drop).toBeCloseTo(6894.757, 3);
  });
});

test("a TypeScript user gets types for every entry, and wrong kinds do not compile", () => {
  writeFileSync(
    join(folder, "use.ts"),
    `import { airDensity, coolerEffectiveness, readInputs } from "chargewright";
     import { airDensity as again } from "chargewright/air";
     import { relations } from "chargewright/registry";
     import { degC, kgPerM3, kPa, type Quantity } from "@chargewright/quantities";
     const rho: Quantity<"density"> = airDensity({ pressure: kPa(84), temperature: degC(38) }).density;
     const same: number = again(readInputs(relations.get("air-density"), { pressure: "84 kPa absolute", temperature: "38 °C" })).density.in(kgPerM3);
     // @ts-expect-error a gauge pressure is not an absolute one
     airDensity({ pressure: kPa.gauge(84), temperature: degC(38) });
     // @ts-expect-error a temperature difference is not a temperature
     airDensity({ pressure: kPa(84), temperature: degC.difference(38) });
     // @ts-expect-error an input is missing
     coolerEffectiveness({ chargeIn: degC(80), coolantIn: degC(20) });
     // @ts-expect-error there is no such input
     readInputs(airDensity, { pressure: "84 kPa absolute", temperature: "38 °C", humidity: "50 %" });
     // @ts-expect-error a density is not expressed in kilopascals
     rho.in(kPa);
     export { rho, same };`,
  );
  const tsc = join(root, "node_modules", "typescript", "bin", "tsc");
  const options = ["--noEmit", "--strict", "--module", "nodenext", "--target", "es2022", "use.ts"];
  const output = () =>
    execFileSync(process.execPath, [tsc, ...options], { cwd: folder, encoding: "utf8", stdio: "pipe" });
  expect(output).not.toThrow();
});

test("ships source beside the build, and no tests", () => {
  for (const name of ["chargewright", "@chargewright/quantities"]) {
    const at = join(folder, "node_modules", name);
    expect(existsSync(join(at, "src", "index.ts"))).toBe(true);
    expect(existsSync(join(at, "LICENSE"))).toBe(true);
    expect(execFileSync("find", [at, "-name", "*.test*"], { encoding: "utf8" })).toBe("");
  }
});
