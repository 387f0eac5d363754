// The whole build: conservation of mass and energy, agreement with the relations it is made of, limits, and refusals.
import { readFileSync } from "node:fs";
import { ChargewrightError, degC, kPa, m, one, Quantity, rpm } from "@chargewright/quantities";
import {
  airDensity,
  airFuelRatio,
  blowerOperation,
  coolerHeatRejected,
  coolerOutletForecast,
  corePressureDrop,
  engineAirFlow,
  orificeFlow,
} from "chargewright";
import {
  type Build,
  type BuildDescription,
  type Condition,
  type OperatingPoint,
  openValue,
  readBuild,
  type SweepAxis,
  type SweepValues,
  solve,
  sweep,
} from "chargewright/build";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { runs } from "../support/random-builds.ts";
import { agree } from "../support/random-inputs.ts";

const demo: BuildDescription = JSON.parse(
  readFileSync(new URL("../../packages/chargewright/examples/moorland-two-seater.json", import.meta.url), "utf8"),
);

/** The operating point; undefined where the fuel does not carry the engine, or the charge leaves what relations take. */
function solved(build: Build, condition: Condition): OperatingPoint | undefined {
  try {
    return solve(build, condition);
  } catch (error) {
    if (error instanceof ChargewrightError && ["no-solution", "out-of-range"].includes(error.code)) return undefined;
    throw error;
  }
}

interface Solved {
  readonly build: Build;
  readonly condition: Condition;
  readonly point: OperatingPoint;
}

/** Holds over random builds that have an operating point. */
function always(hold: (run: Solved) => void, numRuns = 500): void {
  const property = fc.property(runs, ({ description, condition }) => {
    const build = readBuild(description);
    const point = solved(build, condition);
    fc.pre(point !== undefined);
    hold({ build, condition, point });
  });
  // The builds have no simplest one: shrinking takes minutes and tells nothing more.
  fc.assert(property, { numRuns, endOnFailure: true });
}

/** Two numbers are one to a billionth, or to a billionth of a scale where they may vanish. */
function same(left: number, right: number, scale = 0, part = 1e-9): void {
  const close = agree(left, right, part) || Math.abs(left - right) <= part * scale;
  expect(close, `${left} against ${right}`).toBe(true);
}

/** What a sweep, which closes its points less far, may be off. */
const SWEPT = 1e-8;

const GAS = blowerOperation.constants?.R_d?.value as number;
const GAMMA = blowerOperation.constants?.gamma?.value as number;
const AIR_CP = (GAS * GAMMA) / (GAMMA - 1);
const CORE_CP = coolerOutletForecast.inputs.chargeHeatCapacity.default.value;
const CORE_COOLANT_CP = coolerOutletForecast.inputs.coolingHeatCapacity.default.value;

const blowerOf = ({ build }: Solved) => build.blower as NonNullable<Build["blower"]>;

/** Swept flow and the losses of the blower as a pressure, from the description and the relation's defaults. */
function runningOf(run: Solved) {
  const { displacement, steadyLoss, speedLoss, speedLossSpeed, lossShareToAir } = blowerOf(run);
  const { inputs } = blowerOperation;
  const speed = run.point.blowerSpeed.si;
  const steady = steadyLoss?.si ?? inputs.steadyLoss.unit.toSi(inputs.steadyLoss.default.value);
  const atSpeed = speedLoss?.si ?? inputs.speedLoss.unit.toSi(inputs.speedLoss.default.value);
  const counted = speedLossSpeed?.si ?? inputs.speedLossSpeed.unit.toSi(inputs.speedLossSpeed.default.value);
  return {
    swept: displacement.si * speed,
    loss: steady + atSpeed * (speed / counted) ** 2,
    share: lossShareToAir?.si ?? inputs.lossShareToAir.default.value,
  };
}

describe("random builds", () => {
  test("nine in ten have an operating point, with boost and without, with each part and without", () => {
    const seen = new Set<string>();
    const all = fc.sample(runs, { numRuns: 300, seed: 1 });
    let found = 0;
    for (const { description, condition } of all) {
      const build = readBuild(description);
      const point = solved(build, condition);
      if (point === undefined) continue;
      found++;
      seen.add(point.flapOpen ? "flap open" : "boost");
      if (point.reliefFlow.si > 0) seen.add("relief open");
      for (const part of ["filter", "cooler", "ducts", "relief"] as const)
        seen.add(`${build[part] === undefined ? "without" : "with"} ${part}`);
    }
    expect(found).toBeGreaterThan(0.9 * all.length);
    expect(seen.size).toBe(11);
  });
});

describe("mass", () => {
  test("what comes in = what the engine takes + what the relief passes", () =>
    always(({ point }) => same(point.massFlow.si, point.engineFlow.si + point.reliefFlow.si)));

  test("the blower delivers all of it, and less only where the flap around it is open", () =>
    always(({ point: { si, flapOpen } }) => {
      if (flapOpen) expect(si.blowerFlow).toBeLessThanOrEqual(si.massFlow * (1 + 1e-9));
      else same(si.blowerFlow, si.massFlow);
    }));
});

describe("energy", () => {
  test("shaft power = heating of the air + the losses' share that leaves through the casing", () =>
    always((run) => {
      const { massFlow, blowerIn, blowerOut, shaftPower } = run.point.si;
      const { swept, loss, share } = runningOf(run);
      const heating = massFlow * AIR_CP * (blowerOut.temperature - blowerIn.temperature);
      // Temperatures are told to a part of themselves, so a small rise of a large flow is known less well.
      same(shaftPower, heating + (1 - share) * loss * swept, massFlow * AIR_CP * blowerIn.temperature * 1e-4);
    }));

  test("cooler: its heat = what the charge loses = what the cooling air gains", () =>
    always((run) => {
      const { point, build } = run;
      const { massFlow, blowerOut, coolerOut, ambient } = point.si;
      const lost = massFlow * CORE_CP * (blowerOut.temperature - coolerOut.temperature);
      const scale = massFlow * CORE_CP * blowerOut.temperature * 1e-4;
      same(point.coolerHeat.si, lost, scale);
      if (build.cooler === undefined) return same(coolerOut.temperature, blowerOut.temperature);
      const coolingFlow = point.coolingAirFlow.si;
      if (coolingFlow === 0) return same(coolerOut.temperature, blowerOut.temperature);
      const { coolingOut } = coolerOutletForecast.si({
        ...coreOf(build),
        chargeIn: blowerOut.temperature,
        chargeFlow: massFlow,
        coolingIn: ambient.temperature,
        coolingFlow,
      });
      same(point.coolerHeat.si, coolingFlow * CORE_COOLANT_CP * (coolingOut - ambient.temperature), scale);
      same(
        coolerHeatRejected.si({
          chargeFlow: massFlow,
          chargeIn: blowerOut.temperature,
          chargeOut: coolerOut.temperature,
        }).heatRejected,
        lost,
      );
    }));
});

function coreOf(build: Build) {
  const { testConductance, testChargeFlow, testCoolingFlow, chargeShare } = build.cooler as NonNullable<
    Build["cooler"]
  >;
  return {
    testConductance: testConductance.si,
    testChargeFlow: testChargeFlow.si,
    testCoolingFlow: testCoolingFlow.si,
    ...(chargeShare === undefined ? {} : { chargeShare: chargeShare.si }),
  };
}

describe("the states are those of the relations called by themselves", () => {
  test("densities from air-density, of dry air behind the filter and of humid air outside", () =>
    always(({ point, build }) => {
      for (const [name, { pressure, temperature, density }] of Object.entries(point.stations))
        same(
          density.si,
          airDensity.si({
            pressure: pressure.si,
            temperature: temperature.si,
            relativeHumidity: name === "ambient" ? build.site.relativeHumidity?.si : 0,
          }).density,
        );
    }));

  test("delivery, discharge temperature and power from blower-operation", () =>
    always((run) => {
      const { si, flapOpen, blowerVolumetricEfficiency, blowerPower } = run.point;
      if (flapOpen) return;
      const { displacement, leakCoefficient, steadyLoss, lossShareToAir } = blowerOf(run);
      const alone = blowerOperation.si({
        displacement: displacement.si,
        blowerSpeed: run.point.blowerSpeed.si,
        inletPressure: si.blowerIn.pressure,
        inletTemperature: si.blowerIn.temperature,
        dischargePressure: si.blowerOut.pressure,
        leakCoefficient: leakCoefficient?.si,
        steadyLoss: steadyLoss?.si,
        lossShareToAir: lossShareToAir?.si,
      });
      same(alone.massFlow, run.point.massFlow.si);
      same(alone.volumetricEfficiency, blowerVolumetricEfficiency.si);
      same(alone.dischargeTemperature, si.blowerOut.temperature);
      same(alone.shaftPower, blowerPower.si);
    }));

  test("cooler outlet and heat from cooler-outlet-forecast", () =>
    always(({ point: { si, coolingAirFlow, coolerHeat, coolerEffectiveness }, build }) => {
      if (build.cooler === undefined || coolingAirFlow.si === 0) return;
      const alone = coolerOutletForecast.si({
        ...coreOf(build),
        chargeIn: si.blowerOut.temperature,
        chargeFlow: si.massFlow,
        coolingIn: si.ambient.temperature,
        coolingFlow: coolingAirFlow.si,
      });
      same(alone.chargeOut, si.coolerOut.temperature);
      same(alone.heatRejected, coolerHeat.si);
      same(alone.chargeEffectiveness, coolerEffectiveness.si);
    }));

  test("drops of filter, cooler and ducts from core-pressure-drop", () =>
    always(({ point: { si }, build: { filter, cooler, ducts } }) => {
      const { ambient, blowerIn, blowerOut, coolerOut, manifold, massFlow } = si;
      const mean = airDensity.si({
        pressure: blowerOut.pressure,
        temperature: (blowerOut.temperature + coolerOut.temperature) / 2,
      }).density;
      const parts = [
        [filter, ambient.pressure - blowerIn.pressure, ambient.density],
        [cooler?.drop, blowerOut.pressure - coolerOut.pressure, mean],
        [ducts?.drop, coolerOut.pressure - manifold.pressure, coolerOut.density],
      ] as const;
      for (const [part, found, density] of parts) {
        const alone =
          part === undefined
            ? 0
            : corePressureDrop.si({
                testDrop: part.testDrop.si,
                testFlow: part.testFlow.si,
                testDensity: part.testDensity.si,
                flowExponent: part.flowExponent?.si,
                flow: massFlow,
                density,
              }).drop;
        // A difference of two pressures is known to a part of the pressures, not of itself.
        same(found, alone, ambient.pressure * 1e-3);
      }
    }));

  test("engine flow from engine-air-flow, relief flow from orifice-flow, mixture from air-fuel-ratio", () =>
    always(({ point, build: { engine, relief, fuel }, condition }) => {
      const { manifold, ambient, reliefFlow } = point.si;
      same(
        engineAirFlow.si({
          displacement: engine.displacement.si,
          engineSpeed: point.engineSpeed.si,
          volumetricEfficiency: engine.volumetricEfficiency.si,
          revolutionsPerCycle: engine.revolutionsPerCycle?.si,
          intakePressure: manifold.pressure,
          intakeTemperature: manifold.temperature,
        }).massFlow,
        point.engineFlow.si,
      );
      same(
        airFuelRatio.si({
          airMassFlow: point.engineFlow.si,
          fuelMassFlow: point.fuelMassFlow.si,
          stoichiometricRatio: fuel.stoichiometricRatio.si,
        }).ratio,
        point.airFuelRatio.si,
      );
      if (relief === undefined || reliefFlow === 0) return;
      const lift = (point.boost.si - relief.opensAt.si) / (relief.fullyOpenAt.si - relief.opensAt.si);
      const opening = condition.reliefOpening === undefined ? Math.min(lift, 1) : Number(condition.reliefOpening);
      const { massFlow } = orificeFlow.si({
        upstreamPressure: manifold.pressure,
        upstreamTemperature: manifold.temperature,
        downstreamPressure: ambient.pressure,
        area: relief.area.si * opening,
        dischargeCoefficient: relief.dischargeCoefficient?.si,
      });
      same(massFlow, reliefFlow, point.massFlow.si * 1e-3);
    }));

  test("every call opens into a worked check that holds the value of the point", () =>
    always(({ point }) => {
      for (const [name, { relation, args }] of Object.entries(point.calls)) {
        const worked = openValue(point, name);
        expect(worked.relation).toBe(relation.id);
        expect(worked.steps.length).toBeGreaterThan(0);
        const held = [...worked.outputs.map(({ quantity }) => quantity), ...Object.values(args)];
        for (const { si } of held) expect(Number.isFinite(si), name).toBe(true);
        const told = (point as unknown as Record<string, unknown>)[name];
        if (told instanceof Quantity)
          expect(
            held.some(({ kind, si }) => kind === told.kind && agree(si, told.si, 1e-9)),
            name,
          ).toBe(true);
      }
    }, 100));

  test("a name that no relation stands behind is refused with those that have one", () => {
    const point = solve(readBuild(demo), { engineSpeed: "2800 rpm" });
    expect(() => openValue(point, "blowerShare")).toThrow(/open one of .*engineFlow/);
  });
});

describe("limits", () => {
  const turned = ({ build }: Solved, part: Partial<NonNullable<Build["blower"]>>): Build => ({
    ...build,
    blower: { ...(build.blower as NonNullable<Build["blower"]>), ...part },
  });

  test("a blower that hardly turns leaves the engine as it is without one: no boost, the same air within 1 %", () =>
    always((run) => {
      const { blower: _, ...bare } = run.build;
      const { fuelling: __, ...condition } = run.condition;
      const idle = solve(turned(run, { driveRatio: one(0.1) }), condition);
      const without = solve(bare, condition);
      expect(idle.flapOpen).toBe(true);
      expect(idle.boost.si).toBeLessThanOrEqual(0);
      expect(agree(idle.massFlow.si, without.massFlow.si, 0.01)).toBe(true);
      expect(without.boost.si).toBeLessThanOrEqual(0);
      expect(without.blowerPower.si).toBe(0);
    }));

  test("a perfect cooler without a drop brings the manifold to the temperature outside", () =>
    always(({ build, condition }) => {
      if (build.cooler === undefined) return;
      const { ducts: _, ...rest } = build;
      const cooler = {
        ...build.cooler,
        drop: { ...build.cooler.drop, testDrop: build.cooler.drop.testDrop.unit(1e-9) },
      };
      const { channels } = sweep({ ...rest, cooler } as Build, condition, { coolerEffectiveness: [one(1)] });
      same(channels.manifoldTemperature.values[0] as number, build.site.temperature.in(degC), 300);
      const [before, behind] = [channels.blowerOutPressure.values[0], channels.manifoldPressure.values[0]];
      same(before as number, behind as number);
    }));

  test("half the leak raises boost", () =>
    always((run) => {
      if (run.point.flapOpen) return;
      const leak = blowerOf(run).leakCoefficient as Quantity<"ratio">;
      const tighter = sweep(turned(run, { leakCoefficient: one(leak.si / 2) }), run.condition, {
        driveRatio: [blowerOf(run).driveRatio],
      });
      expect(tighter.refused).toEqual([]);
      expect(tighter.channels.boost.values[0] as number).toBeGreaterThan(run.point.boost.si / 1000);
    }));

  /** A channel falls or rises along an axis. */
  function along(
    { build, condition }: Solved,
    axis: SweepAxis,
    values: readonly Quantity[],
    channel: "massFlow" | "boost",
    direction: "falls" | "rises or stays" | "falls or stays",
  ): void {
    const { channels, refused } = sweep(build, condition, { [axis]: values } as SweepValues);
    expect(refused).toEqual([]);
    // Without boost a gauge shows the drops of the engine's own breathing, which is another matter.
    const found = [...channels[channel].values].map((value) => Math.max(value, 0));
    for (let i = 1; i < found.length; i++) {
      const change = (found[i] as number) - (found[i - 1] as number);
      if (direction === "falls") expect(change, `${axis}: ${found}`).toBeLessThan(0);
      else expect(direction === "rises or stays" ? change : -change, `${axis}: ${found}`).toBeGreaterThan(-1e-9);
    }
  }

  test("thinner and hotter air is less of it", () =>
    always((run) => {
      const heights = [0, 500, 1500, 2500].map((height) => m(height));
      along(run, "altitude", heights, "massFlow", "falls");
      const days = [-20, 0, 20, 40].map((celsius) => degC(celsius));
      along(run, "ambientTemperature", days, "massFlow", "falls");
    }, 200));

  test("less drive is less boost, and so is an open relief", () =>
    always((run) => {
      const full = blowerOf(run).driveRatio.si;
      const ratios = [0.25, 0.5, 0.75, 0.9, 1].map((share) => one(Math.max(share * full, 0.1)));
      along(run, "driveRatio", ratios, "boost", "rises or stays");
      if (run.build.relief === undefined || run.point.flapOpen || run.point.boost.si <= 0) return;
      const openings = [0, 0.25, 0.5, 1].map((share) => one(share));
      along(run, "reliefOpening", openings, "boost", "falls or stays");
      const { channels } = sweep(run.build, run.condition, { reliefOpening: openings });
      const [shut, , , open] = channels.boost.values;
      expect(open as number).toBeLessThan(shut as number);
    }, 200));
});

describe("sweep", () => {
  test("agrees with solve in every column, whichever way the value is turned", () =>
    always(({ build, condition, point }) => {
      const { channels, refused } = sweep(build, condition, { engineSpeed: [point.engineSpeed] });
      expect(refused).toEqual([]);
      const told = {
        boost: point.boost,
        blowerOutPressure: point.stations.blowerOut.pressure,
        blowerOutTemperature: point.stations.blowerOut.temperature,
        coolerOutTemperature: point.stations.coolerOut.temperature,
        manifoldPressure: point.stations.manifold.pressure,
        manifoldTemperature: point.stations.manifold.temperature,
        manifoldDensity: point.stations.manifold.density,
        massFlow: point.massFlow,
        engineFlow: point.engineFlow,
        blowerVolumetricEfficiency: point.blowerVolumetricEfficiency,
        blowerPower: point.blowerPower,
      };
      for (const [name, quantity] of Object.entries(told)) {
        const { unit, values } = channels[name as keyof typeof told];
        same(values[0] as number, (quantity as Quantity).in(unit as never), 1, SWEPT);
      }
    }));

  test("turns the road speed of the gear with the engine speed, as solve does", () => {
    const build = readBuild(demo);
    const speeds = [1500, 2500, 3600].map((speed) => rpm(speed));
    const { channels } = sweep(build, { engineSpeed: "2800 rpm" }, { engineSpeed: speeds });
    speeds.forEach((engineSpeed, row) => {
      const { manifold } = solve(build, { engineSpeed }).stations;
      same(channels.manifoldTemperature.values[row] as number, manifold.temperature.in(degC), 1, SWEPT);
    });
  });

  test("over two axes has the rows of two solves", () => {
    const build = readBuild(demo);
    const condition = { engineSpeed: "2800 rpm", roadSpeed: "70 km/h" };
    const heights = [0, 1500].map((height) => m(height));
    const days = [-5, 20, 38].map((celsius) => degC(celsius));
    const { shape, axes, channels } = sweep(build, condition, { altitude: heights, ambientTemperature: days });
    expect(shape).toEqual([2, 3]);
    heights.forEach((altitude, i) => {
      days.forEach((ambientTemperature, k) => {
        const row = 3 * i + k;
        expect(axes.altitude?.values[row]).toBe(altitude.in(m));
        expect(axes.ambientTemperature?.values[row]).toBeCloseTo(ambientTemperature.in(degC), 9);
        const point = solve(build, { ...condition, altitude, ambientTemperature });
        same(channels.blowerOutPressure.values[row] as number, point.stations.blowerOut.pressure.in(kPa), 0, SWEPT);
        same(
          channels.manifoldTemperature.values[row] as number,
          point.stations.manifold.temperature.in(degC),
          1,
          SWEPT,
        );
      });
    });
  });

  test("agrees with solve in every row, through boost, open flap and no operating point", () => {
    const near = fc.sample(runs, { numRuns: 60, seed: 3 });
    let [boosted, drawn, none] = [0, 0, 0];
    for (const { description, condition } of near) {
      const build = readBuild(description);
      const { fuelling: _, ...given } = condition;
      const driveRatio = [0.3, 0.9, 1.2, 1.25, 1.3, 1.8, 3, 3.01].map((ratio) => one(ratio));
      const engineSpeed = [900, 1800, 1850, 3600].map((speed) => rpm(speed));
      const { channels, refused } = sweep(build, given, { engineSpeed, driveRatio });
      engineSpeed.forEach((speed, i) => {
        driveRatio.forEach((ratio, k) => {
          const row = driveRatio.length * i + k;
          const { blower } = build;
          const turned = blower === undefined ? build : { ...build, blower: { ...blower, driveRatio: ratio } };
          const at = sweep(turned, given, { engineSpeed: [speed] });
          expect(refused.includes(row)).toBe(at.refused.length > 0);
          for (const [name, { values }] of Object.entries(at.channels))
            same(channels[name as keyof typeof channels].values[row] as number, values[0] as number, 300, SWEPT);
          if (at.refused.length > 0) none++;
          else if ((at.channels.boost.values[0] as number) > 0) boosted++;
          else drawn++;
        });
      });
    }
    expect(Math.min(boosted, drawn, none)).toBeGreaterThan(20);
  });
});

describe("refusals", () => {
  const refusalOf = (act: () => unknown): ChargewrightError => {
    try {
      act();
    } catch (error) {
      expect(error).toBeInstanceOf(ChargewrightError);
      return error as ChargewrightError;
    }
    throw new Error("nothing was refused");
  };

  type Json = { [name: string]: Json | Json[] | string | number };

  /** The description with the value at a path replaced; left out where the value is undefined. */
  function withAt(path: readonly (string | number)[], value: unknown): unknown {
    const copy = structuredClone(demo) as unknown as Json;
    const last = path.at(-1) as string;
    const holder = path.slice(0, -1).reduce<Json>((at, key) => at[key] as Json, copy);
    if (value === undefined) delete holder[last];
    else holder[last] = value as Json;
    return copy;
  }

  /** The paths of every value in the description, sections and lists too. */
  function pathsIn(value: unknown, path: readonly (string | number)[] = []): (string | number)[][] {
    const inside =
      typeof value !== "object" || value === null
        ? []
        : Object.entries(value).flatMap(([key, each]) =>
            pathsIn(each, [...path, Array.isArray(value) ? Number(key) : key]),
          );
    return path.length === 0 ? inside : [[...path], ...inside];
  }

  const paths = pathsIn(demo);

  test("every entry misspelt is refused by its path, with the one that is meant", () => {
    for (const path of paths.filter((each) => typeof each.at(-1) === "string")) {
      const name = path.at(-1) as string;
      const holder = path.slice(0, -1);
      const misspelt = `${name.slice(0, -1)}${name.at(-1) === "q" ? "z" : "q"}`;
      const value = path.reduce<unknown>((at, key) => (at as Json)[key], demo);
      const { code, input, message } = refusalOf(() => readBuild(withAt([...holder, misspelt], value)));
      expect(code, message).toBe("unknown-input");
      expect(input).toBe([...holder, misspelt].join("."));
      expect(message).toContain(`is "${name}" meant?`);
    }
  });

  test("every entry that is needed is missed by its path, the others are not", () => {
    const needed = new Set<string>();
    for (const path of paths.filter((each) => typeof each.at(-1) === "string")) {
      try {
        readBuild(withAt(path, undefined));
      } catch (error) {
        const { code, input, message } = error as ChargewrightError;
        expect(code, message).toBe("missing-input");
        expect(input).toBe(path.join("."));
        needed.add(path.join("."));
      }
    }
    for (const name of ["name", "site", "engine", "fuel", "engine.stroke", "cooler.drop", "limiter.calibration.2.fuel"])
      expect(needed).toContain(name);
    for (const name of ["blower", "cooler", "vehicle", "blower.leakCoefficient", "ducts.drop.flowExponent"])
      expect(needed).not.toContain(name);
  });

  test("a quantity of another kind is refused by its path, with what is needed", () => {
    const texts = paths.filter((path) => {
      const value = path.reduce<unknown>((at, key) => (at as Json)[key], demo);
      return typeof value === "string" && path[0] !== "name";
    });
    expect(texts.length).toBeGreaterThan(50);
    for (const path of texts) {
      const { code, input, message } = refusalOf(() => readBuild(withAt(path, "3 cd")));
      expect(["unknown-unit", "wrong-kind", "unreadable"], message).toContain(code);
      expect(input).toBe(path.join("."));
      // No entry of a build is a luminous intensity or an electric charge; every one has a kind of its own.
      const other = refusalOf(() => readBuild(withAt(path, "250 mA")));
      expect(other.input).toBe(path.join("."));
    }
  });

  test("a number out of what its relation takes is refused with the range", () => {
    const { code, input, message } = refusalOf(() => readBuild(withAt(["engine", "compressionRatio"], "2200")));
    expect(code).toBe("out-of-range");
    expect(input).toBe("engine.compressionRatio");
    expect(message).toMatch(/needs a ratio from \d/);
  });

  const hostile: readonly unknown[] = [
    null,
    true,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    -1,
    10n,
    Symbol("x"),
    () => "1",
    [],
    [[]],
    {},
    Object.create(null),
    {
      toString: () => {
        throw new TypeError("no text");
      },
    },
    "",
    " ",
    "NaN",
    "Infinity rpm",
    "1e999 mm",
    "-3 L",
    "__proto__",
    "constructor",
    "𝟙 kPa",
    "1 kPa; DROP",
    "9".repeat(10_000),
  ];

  test("hostile values anywhere in a description are refused with the path, never with another error", () => {
    for (const path of paths)
      for (const value of hostile) {
        const text = path.join(".");
        if (path[0] === "name" && typeof value === "string" && value !== "") continue;
        let refusal: unknown;
        try {
          readBuild(withAt(path, value));
        } catch (error) {
          refusal = error;
        }
        expect(refusal, `${text}: ${typeof value}`).toBeInstanceOf(ChargewrightError);
        const { input } = refusal as ChargewrightError;
        expect(input === text || input?.startsWith(`${text}.`), `${input} for ${text}`).toBe(true);
      }
  });

  test("hostile descriptions are refused as a whole", () => {
    for (const value of [...hostile, "{", "[1,2", '"text"', undefined]) {
      const { relation } = refusalOf(() => readBuild(value));
      expect(relation).toBe("build");
    }
    fc.assert(
      fc.property(
        fc.anything({ withBigInt: true, withNullPrototype: true, withDate: true, withMap: true }),
        (value) => {
          refusalOf(() => readBuild(value));
        },
      ),
      { numRuns: 500 },
    );
  });

  test("hostile conditions and axes are refused by their part", () => {
    const build = readBuild(demo);
    const parts = [
      "ambientTemperature",
      "altitude",
      "ambientPressure",
      "relativeHumidity",
      "roadSpeed",
      "reliefOpening",
    ];
    for (const value of hostile) {
      for (const part of ["engineSpeed", ...parts]) {
        const condition = { engineSpeed: "2800 rpm", [part]: value } as unknown as Condition;
        expect(refusalOf(() => solve(build, condition)).input, `${part}: ${typeof value}`).toBe(part);
      }
      if (value !== null) {
        const fuelling = { engineSpeed: "2800 rpm", fuelling: value } as unknown as Condition;
        expect(refusalOf(() => solve(build, fuelling)).input).toMatch(/^fuelling/);
        const gear = { engineSpeed: "2800 rpm", gear: value } as unknown as Condition;
        expect(refusalOf(() => solve(build, gear)).input).toBe("gear");
      }
      refusalOf(() => solve(build, value as Condition));
      for (const axis of ["driveRatio", "altitude", "coolerEffectiveness"] as const)
        expect(
          refusalOf(() => sweep(build, { engineSpeed: "2800 rpm" }, { [axis]: [value] } as SweepValues)).input,
        ).toBe(axis);
      refusalOf(() => sweep(build, { engineSpeed: "2800 rpm" }, value as SweepValues));
    }
  });

  test("a misspelt part of a condition is refused with the one that is meant", () => {
    const build = readBuild(demo);
    const misspelt = { engineSpeed: "2800 rpm", ambientTemprature: "20 °C" } as Condition;
    const { code, input, message } = refusalOf(() => solve(build, misspelt));
    expect([code, input]).toEqual(["unknown-input", "ambientTemprature"]);
    expect(message).toContain('is "ambientTemperature" meant?');
    const graded = { engineSpeed: "2800 rpm", fuelling: { roadLoad: { gradient: "3 %" } } } as unknown as Condition;
    expect(refusalOf(() => solve(build, graded)).input).toBe("fuelling.roadLoad.gradient");
  });

  test("an axis is refused out of its range, and where there is none of that name", () => {
    const build = readBuild(demo);
    const at = { engineSpeed: "2800 rpm" };
    for (const values of [
      { engineSpeed: [rpm(-100)] },
      { coolerEffectiveness: [one(1.1)] },
      { driveRatio: [one(1), one(0)] },
      { ambientTemperature: [degC(-200)] },
    ])
      expect(refusalOf(() => sweep(build, at, values)).code).toBe("out-of-range");
    expect(refusalOf(() => sweep(build, at, { boost: [one(1)] } as unknown as SweepValues)).input).toBe("boost");
    expect(refusalOf(() => sweep(build, at, {})).input).toBe("axes");
  });

  test("where there is no point the nearest drive ratio that has one is told: it has one, and a little more has none", () => {
    let refused = 0;
    for (const { description, condition } of fc.sample(runs, { numRuns: 60, seed: 5 })) {
      const build = readBuild(description);
      const { blower } = build;
      if (blower === undefined) continue;
      const given = { ...condition, fuelling: "limit" as const };
      const at = (ratio: number) => ({ ...build, blower: { ...blower, driveRatio: one(ratio) } });
      const has = (ratio: number) => sweep(at(ratio), given, { driveRatio: [one(ratio)] }).refused.length === 0;
      if (has(5)) continue;
      refused++;
      const { code, message } = refusalOf(() => solve(at(5), given));
      expect(code).toBe("no-solution");
      const [, told] = /drive ratio of (\S+), with a boost of \d/.exec(message) ?? [];
      expect(has(Number(told) * 0.999), message).toBe(true);
      expect(has(Number(told) * 1.001), message).toBe(false);
    }
    expect(refused).toBeGreaterThan(3);
  });

  test("a blower without any leak is refused at the pressure that its relation takes, not beyond", () => {
    const { relief: _, ...rest } = readBuild(demo);
    const blower = { ...(rest.blower as NonNullable<Build["blower"]>), leakCoefficient: one(0), driveRatio: one(6) };
    const { message } = refusalOf(() => solve({ ...rest, blower }, { engineSpeed: "2800 rpm" }));
    const [, ratio] = /delivers against, up to (\S+),/.exec(message) ?? [];
    const [, most] = blowerOperation.inputs.dischargePressure.range;
    expect(Number(ratio) * 90, message).toBeLessThan(1.2 * most);
  });

  test("a car that stands has an operating point, without cooling and without economy", () => {
    const build = readBuild(demo);
    const standing = solve(build, { engineSpeed: "2000 rpm", roadSpeed: "0 km/h" });
    expect(standing.coolerHeat.si).toBe(0);
    expect(standing.economy).toBeUndefined();
    const creeping = solve(build, { engineSpeed: "2000 rpm", roadSpeed: "0.01 km/h" });
    expect(creeping.stations.manifold.temperature.si).toBeCloseTo(standing.stations.manifold.temperature.si, 0);
    expect(creeping.coolerHeat.si).toBeGreaterThan(0);
  });
});
