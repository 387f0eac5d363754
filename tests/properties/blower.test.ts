// Identities of the blower's relations: conservation, limits, inverses, scaling, and two routes to one value.
import { ChargewrightError, degC, kPa, litrePerRev, one, rpm } from "@chargewright/quantities";
import {
  type AnyRelation,
  blowerDischargeTemperature,
  blowerDisplacementForFlow,
  blowerDisplacementFromRotors,
  blowerEfficiencyFromPower,
  blowerEfficiencyFromTemperature,
  blowerFlow,
  blowerIdealWork,
  blowerLeakArea,
  blowerLeakAreaFromSlip,
  blowerLeakage,
  blowerLeastSpeed,
  blowerOperation,
  blowerPressureForTemperature,
  blowerShaftPower,
  blowerSlip,
  blowerTipSpeed,
  blowerVolumetricEfficiency,
  driveRatioForBoost,
  driveRatioForFlow,
  solveFor,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, type Complete, siOf, validArguments } from "../support/random-inputs.ts";

const R = 287.05287;
const KAPPA = 2 / 7;

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

describe("blower-flow", () => {
  test("mass flow = density · volume flow, volume flow = efficiency · displacement · ratio · engine speed", () =>
    always(blowerFlow, (si, { massFlow, volumeFlow, sweptFlow }) => [
      [massFlow, si.inletDensity * volumeFlow],
      [volumeFlow, si.volumetricEfficiency * si.displacement * si.driveRatio * si.engineSpeed],
      [sweptFlow, volumeFlow / si.volumetricEfficiency],
    ]));

  test("half the ratio at twice the displacement sweeps the same", () =>
    always(blowerFlow, (si, { sweptFlow }) => [
      [blowerFlow.si({ ...si, driveRatio: si.driveRatio / 2, displacement: 2 * si.displacement }).sweptFlow, sweptFlow],
    ]));
});

describe("blower-discharge-temperature", () => {
  test("isentropic rise = efficiency · actual rise, and no efficiency above the lossless, leak-free machine's", () =>
    always(blowerDischargeTemperature, (si, { dischargeTemperature, isentropicEfficiency }) => {
      const ratio = si.dischargePressure / si.inletPressure;
      const ideal = blowerDischargeTemperature.si({ ...si, volumetricEfficiency: 1, lossPressure: 0 });
      expect(isentropicEfficiency).toBeLessThanOrEqual(ideal.isentropicEfficiency * (1 + 1e-12));
      if (ratio < 1.001) return [];
      return [
        [
          si.inletTemperature * (ratio ** KAPPA - 1),
          isentropicEfficiency * (dischargeTemperature - si.inletTemperature),
        ],
      ];
    }));

  test("the rise is proportional to inlet temperature and to 1/volumetric efficiency", () =>
    always(blowerDischargeTemperature, (si, { dischargeTemperature }) => {
      const rise = dischargeTemperature - si.inletTemperature;
      if (rise < 0.001 * si.inletTemperature) return [];
      const halved = blowerDischargeTemperature.si({ ...si, volumetricEfficiency: si.volumetricEfficiency / 2 });
      const warmer = blowerDischargeTemperature.si({ ...si, inletTemperature: 1.1 * si.inletTemperature });
      return [
        [halved.dischargeTemperature - si.inletTemperature, 2 * rise],
        [warmer.dischargeTemperature, 1.1 * dischargeTemperature],
      ];
    }));
});

describe("blower-operation", () => {
  test("energy: mass flow · cp · temperature rise = (pressure difference + share · losses) · swept flow", () =>
    always(blowerOperation, (si, { massFlow, dischargeTemperature }) => {
      const part = si.blowerSpeed / si.speedLossSpeed;
      const loss = si.steadyLoss + si.speedLoss * part ** 2;
      const work = si.dischargePressure - si.inletPressure + si.lossShareToAir * loss;
      return [
        [
          ((massFlow * R) / KAPPA) * (dischargeTemperature - si.inletTemperature),
          work * si.displacement * si.blowerSpeed,
        ],
      ];
    }));

  test("mass: what is swept = what is delivered + what leaks at the discharge temperature", () =>
    always(blowerOperation, (si, { volumetricEfficiency, dischargeTemperature }) => {
      const { leakFlow, flowFunction } = blowerLeakage.si({ ...si, dischargeTemperature });
      expect(flowFunction).toBe(blowerOperation.si(si).flowFunction);
      const swept = si.displacement * si.blowerSpeed;
      return [[swept, swept * volumetricEfficiency + leakFlow]];
    }));

  test("discharge temperature and shaft power by their own relations", () =>
    always(blowerOperation, (si, { volumetricEfficiency, dischargeTemperature, shaftPower, torque }) => {
      const power = blowerShaftPower.si(si);
      const temperature = blowerDischargeTemperature.si({
        ...si,
        volumetricEfficiency,
        lossPressure: power.lossPressure,
      });
      return [
        [temperature.dischargeTemperature, dischargeTemperature],
        [power.shaftPower, shaftPower],
        [power.torque, torque],
        [shaftPower, 2 * Math.PI * si.blowerSpeed * torque],
      ];
    }));

  test("no leak: volumetric efficiency = 1", () =>
    always(blowerOperation, (si) => [[blowerOperation.si({ ...si, leakCoefficient: 0 }).volumetricEfficiency, 1]]));

  test("all pressures times s: mass flow and power times s, efficiency and temperature unchanged", () =>
    always(blowerOperation, (si, { volumetricEfficiency, dischargeTemperature, massFlow, shaftPower }) => {
      const s = 1.7;
      const scaled = blowerOperation.si({
        ...si,
        inletPressure: s * si.inletPressure,
        dischargePressure: s * si.dischargePressure,
        steadyLoss: s * si.steadyLoss,
        speedLoss: s * si.speedLoss,
      });
      const steep = volumetricEfficiency < 1.05 * limitOf(si);
      return steep
        ? [[scaled.shaftPower, s * shaftPower]]
        : [
            [scaled.volumetricEfficiency, volumetricEfficiency],
            [scaled.dischargeTemperature, dischargeTemperature],
            [scaled.massFlow, s * massFlow],
            [scaled.shaftPower, s * shaftPower],
          ];
    }));

  test("displacement times s³ at speed over s: volumetric efficiency unchanged, as the leak goes with s²", () =>
    always(blowerOperation, (si, { volumetricEfficiency }) => {
      const s = 1.3;
      if (volumetricEfficiency < 1.05 * limitOf(si)) return [];
      const scaled = blowerOperation.si({
        ...si,
        displacement: s ** 3 * si.displacement,
        blowerSpeed: si.blowerSpeed / s,
        speedLossSpeed: si.speedLossSpeed / s,
      });
      return [[scaled.volumetricEfficiency, volumetricEfficiency]];
    }));

  test("more pressure: less air, hotter; wider clearances: less air, hotter, at the same power", () => {
    const base = { displacement: 0.62e-3, inletPressure: 93.4e3, inletTemperature: 291.15, steadyLoss: 4000 };
    for (const speed of [1500, 2500, 4000, 8000, 12000]) {
      let before = { massFlow: Number.POSITIVE_INFINITY, dischargeTemperature: 0 };
      for (let ratio = 1.01; ratio <= 2.6; ratio += 0.03) {
        const si = { ...base, blowerSpeed: speed / 60, dischargePressure: ratio * base.inletPressure };
        const now = blowerOperation.si(si);
        if (Number.isNaN(now.massFlow)) break;
        expect(now.massFlow).toBeLessThan(before.massFlow);
        expect(now.dischargeTemperature).toBeGreaterThan(before.dischargeTemperature);
        const worn = blowerOperation.si({ ...si, leakCoefficient: 0.0046 });
        expect(worn.shaftPower).toBe(now.shaftPower);
        expect(Number.isNaN(worn.massFlow) || worn.massFlow < now.massFlow).toBe(true);
        before = now;
      }
    }
  });

  test("below the least speed the kernel has no number and the call refuses; above it, it has one", () => {
    for (const ratio of [1.05, 1.2, 1.5, 1.9, 2.4]) {
      const si = {
        displacement: 0.62e-3,
        inletPressure: 93.4e3,
        inletTemperature: 291.15,
        dischargePressure: ratio * 93.4e3,
        lossPressure: 5000,
      };
      const limit = blowerLeastSpeed.si(si);
      const at = (speed: number) =>
        blowerOperation.si({ ...si, blowerSpeed: speed, steadyLoss: si.lossPressure, speedLoss: 0 });
      expect(at(limit.leastSpeed * (1 - 1e-9)).massFlow).toBeNaN();
      const justAbove = at(limit.leastSpeed * (1 + 1e-9));
      expect(agree(justAbove.volumetricEfficiency, limit.volumetricEfficiency, 1e-3)).toBe(true);
      expect(agree(justAbove.dischargeTemperature, limit.dischargeTemperature, 1e-3)).toBe(true);
    }
    const refused = () =>
      blowerOperation({
        displacement: litrePerRev(0.62),
        blowerSpeed: rpm(600),
        inletPressure: kPa(93.4),
        inletTemperature: degC(18),
        dischargePressure: kPa(148),
      });
    expect(refused).toThrow(ChargewrightError);
    expect(refused).toThrow(/cannot hold this pressure at this speed/);
  });

  test("equal pressures: the kernel gives the swept air, warmed by the losses alone", () => {
    const si = {
      displacement: 0.62e-3,
      blowerSpeed: 60,
      inletPressure: 93.4e3,
      inletTemperature: 291.15,
      dischargePressure: 93.4e3,
    };
    const { volumetricEfficiency, flowFunction, massFlow, dischargeTemperature } = blowerOperation.si(si);
    expect([volumetricEfficiency, flowFunction]).toEqual([1, 0]);
    expect(agree(massFlow, (0.62e-3 * 60 * 93.4e3) / (R * 291.15), 1e-14)).toBe(true);
    expect(dischargeTemperature).toBeGreaterThan(291.15);
  });

  test("solved backwards: the speed, the pressure and the leak that give a wanted air flow", () => {
    const given = {
      displacement: litrePerRev(0.62),
      blowerSpeed: rpm(4060),
      inletPressure: kPa(93.4),
      inletTemperature: degC(18),
      dischargePressure: kPa(148),
      leakCoefficient: one(0.0037),
    };
    const { massFlow } = blowerOperation(given);
    for (const name of ["blowerSpeed", "dischargePressure", "leakCoefficient"] as const) {
      const { [name]: sought, ...others } = given;
      const found = solveFor(blowerOperation, name, { massFlow }, others as never);
      expect(agree(found.si, sought.si, 1e-9), name).toBe(true);
    }
  });
});

/** The volumetric efficiency at which the leak runs away. */
function limitOf(si: Complete<Parameters<typeof blowerOperation.si>[0]>): number {
  const { lossPressure } = blowerShaftPower.si(si);
  return blowerLeastSpeed.si({ ...si, lossPressure }).volumetricEfficiency;
}

describe("blower-leakage", () => {
  test("slip speed · displacement = leak; delivered + leaked = swept", () =>
    always(blowerLeakage, (si, { leakFlow, slipSpeed, volumetricEfficiency }) => [
      [slipSpeed * si.displacement, leakFlow],
      [(volumetricEfficiency * si.blowerSpeed + slipSpeed) / si.blowerSpeed, 1],
    ]));

  test("the leak does not depend on speed; choked, its mass depends on the discharge alone", () => {
    const choked = {
      displacement: 0.62e-3,
      blowerSpeed: 100,
      inletPressure: 50e3,
      dischargePressure: 150e3,
      dischargeTemperature: 400,
    };
    const { leakMassFlow, flowFunction } = blowerLeakage.si(choked);
    expect(blowerLeakage.si({ ...choked, blowerSpeed: 200 }).leakMassFlow).toBe(leakMassFlow);
    expect(agree(blowerLeakage.si({ ...choked, inletPressure: 70e3 }).leakMassFlow, leakMassFlow, 1e-12)).toBe(true);
    expect(flowFunction).toBeCloseTo(Math.sqrt(1.4) * (2 / 2.4) ** (2.4 / 0.8), 14);
  });

  test("small differences: the square-root law of an incompressible leak", () => {
    for (const difference of [1, 10, 100]) {
      const si = {
        displacement: 0.62e-3,
        blowerSpeed: 100,
        inletPressure: 1e5,
        dischargePressure: 1e5 + difference,
        dischargeTemperature: 300,
        leakCoefficient: 0.0045,
      };
      const area = 0.0045 * si.displacement ** (2 / 3);
      const incompressible = area * Math.sqrt((2 * difference * R * 300) / 1e5);
      expect(agree(blowerLeakage.si(si).leakFlow, incompressible, difference / 1e5)).toBe(true);
    }
  });
});

describe("blower-leak-area", () => {
  test("the leak coefficient of blower-leakage comes back", () =>
    always(blowerLeakage, (si, { volumetricEfficiency }) => {
      if (volumetricEfficiency > 0.99) return [];
      const { leakCoefficient, leakArea } = blowerLeakArea.si({ ...si, volumetricEfficiency });
      return [
        [leakCoefficient, si.leakCoefficient],
        [leakArea, si.leakCoefficient * Math.cbrt(si.displacement) ** 2],
      ];
    }));

  test("twice the missing share, twice the area", () =>
    always(blowerLeakArea, (si, { leakArea }) => {
      const missing = (1 - si.volumetricEfficiency) / 2;
      return [[2 * blowerLeakArea.si({ ...si, volumetricEfficiency: 1 - missing }).leakArea, leakArea]];
    }));
});

describe("blower-leak-area-from-slip", () => {
  test("blower-leakage gives the slip back, the air at inlet temperature", () =>
    always(blowerLeakAreaFromSlip, (si, { leakCoefficient }) => [
      [
        blowerLeakage.si({
          displacement: si.displacement,
          blowerSpeed: 1,
          inletPressure: si.inletPressure,
          dischargePressure: si.inletPressure + si.pressureDifference,
          dischargeTemperature: si.inletTemperature,
          leakCoefficient,
        }).slipSpeed,
        si.slipSpeed,
      ],
    ]));

  test("area proportional to slip; coefficient = area over displacement to the two thirds", () =>
    always(blowerLeakAreaFromSlip, (si, { leakArea, leakCoefficient }) => [
      [blowerLeakAreaFromSlip.si({ ...si, slipSpeed: 3 * si.slipSpeed }).leakArea, 3 * leakArea],
      [leakCoefficient * si.displacement ** (2 / 3), leakArea],
    ]));
});

describe("blower-slip", () => {
  test("four times the pressure difference, twice the slip; volume flow = displacement · (speed - slip)", () =>
    always(blowerSlip, (si, { slipSpeed, volumeFlow }) => [
      [blowerSlip.si({ ...si, pressureDifference: 4 * si.pressureDifference }).slipSpeed, 2 * slipSpeed],
      [volumeFlow, si.displacement * (si.blowerSpeed - slipSpeed)],
    ]));

  test("within 3.3 % of the nozzle law with a cold leak, up to a ratio of 2.5", () => {
    for (let ratio = 1.02; ratio <= 2.5; ratio += 0.02) {
      const si = {
        displacement: 0.62e-3,
        blowerSpeed: 400,
        slipAtReference: 275 / 60,
        pressureDifference: (ratio - 1) * 1e5,
        inletPressure: 1e5,
        inletTemperature: 293.15,
      };
      const { leakCoefficient } = blowerLeakAreaFromSlip.si({
        displacement: si.displacement,
        slipSpeed: si.slipAtReference,
        inletPressure: 101352.93,
        inletTemperature: 528 / 1.8,
      });
      const nozzle = blowerLeakage.si({
        displacement: si.displacement,
        blowerSpeed: si.blowerSpeed,
        inletPressure: 1e5,
        dischargePressure: ratio * 1e5,
        dischargeTemperature: si.inletTemperature,
        leakCoefficient,
      });
      expect(agree(blowerSlip.si(si).slipSpeed, nozzle.slipSpeed, 0.033), `${ratio}`).toBe(true);
    }
  });
});

describe("blower-volumetric-efficiency", () => {
  test("the efficiency that blower-flow was given comes back", () =>
    always(blowerVolumetricEfficiency, (si, { volumetricEfficiency, sweptFlow, volumeFlow }) => [
      [
        blowerFlow.si({
          displacement: si.displacement,
          engineSpeed: si.blowerSpeed,
          driveRatio: 1,
          volumetricEfficiency,
          inletDensity: si.inletPressure / (R * si.inletTemperature),
        }).massFlow,
        si.massFlow,
      ],
      [volumeFlow, volumetricEfficiency * sweptFlow],
    ]));

  test("proportional to the air, inversely to the swept volume", () =>
    always(blowerVolumetricEfficiency, (si, { volumetricEfficiency }) => [
      [
        blowerVolumetricEfficiency.si({ ...si, massFlow: 3 * si.massFlow }).volumetricEfficiency,
        3 * volumetricEfficiency,
      ],
      [
        blowerVolumetricEfficiency.si({ ...si, displacement: 2 * si.displacement }).volumetricEfficiency,
        volumetricEfficiency / 2,
      ],
    ]));
});

describe("blower-efficiency-from-temperature", () => {
  test("efficiency = reached share · ceiling", () =>
    always(blowerEfficiencyFromTemperature, (_, { isentropicEfficiency, reachedShare, ceiling }) => [
      [isentropicEfficiency, reachedShare * ceiling],
    ]));

  test("a leaking machine without losses reaches its volumetric efficiency", () =>
    always(blowerDischargeTemperature, (si) => {
      const lossless = { ...si, lossPressure: 0 };
      const { dischargeTemperature, isentropicEfficiency } = blowerDischargeTemperature.si(lossless);
      if (si.dischargePressure < 1.01 * si.inletPressure) return [];
      const found = blowerEfficiencyFromTemperature.si({ ...lossless, dischargeTemperature });
      return [
        [found.reachedShare, si.volumetricEfficiency],
        [found.isentropicEfficiency, isentropicEfficiency],
      ];
    }));

  test("no predicted operation reaches the ceiling", () =>
    always(blowerOperation, (si, { dischargeTemperature }) => {
      const { reachedShare } = blowerEfficiencyFromTemperature.si({ ...si, dischargeTemperature });
      expect(reachedShare).toBeLessThanOrEqual(1 + 1e-12);
      return [];
    }));
});

describe("blower-ideal-work", () => {
  test("power = work · speed; isentropic work = efficiency · work, and never more than it", () =>
    always(blowerIdealWork, (si, { work, isentropicWork, efficiency, power }) => {
      expect(isentropicWork).toBeLessThan(work);
      return [
        [power, work * si.blowerSpeed],
        [isentropicWork, efficiency * work],
      ];
    }));

  test("small ratios: efficiency = 1 - (r - 1)/(2 gamma)", () => {
    for (const rise of [0.01, 0.02, 0.04]) {
      const { efficiency } = blowerIdealWork.si({
        displacement: 1e-3,
        blowerSpeed: 10,
        inletPressure: 1e5,
        dischargePressure: 1e5 * (1 + rise),
      });
      expect(Math.abs(efficiency - (1 - rise / 2.8))).toBeLessThan(0.4 * rise ** 2);
    }
  });

  test("is the power of the predicted operation without losses, leak or no leak", () =>
    always(blowerOperation, (si) => [
      [
        blowerOperation.si({ ...si, steadyLoss: 0, speedLoss: 0 }).shaftPower,
        blowerIdealWork.si({ ...si, blowerSpeed: si.blowerSpeed }).power,
      ],
    ]));
});

describe("blower-efficiency-from-power", () => {
  test("efficiency = reached share · ceiling = isentropic over shaft power", () =>
    always(blowerEfficiencyFromPower, (si, { efficiency, reachedShare, ceiling, isentropicPower }) => [
      [efficiency, reachedShare * ceiling],
      [efficiency, isentropicPower / si.shaftPower],
    ]));

  test("without losses the reached share is the volumetric efficiency", () =>
    always(blowerOperation, (si) => {
      const free = { ...si, steadyLoss: 0, speedLoss: 0 };
      const { massFlow, shaftPower, volumetricEfficiency } = blowerOperation.si(free);
      const volumeFlow = (massFlow * R * si.inletTemperature) / si.inletPressure;
      return [[blowerEfficiencyFromPower.si({ ...si, volumeFlow, shaftPower }).reachedShare, volumetricEfficiency]];
    }));
});

describe("blower-shaft-power", () => {
  test("power = 2 pi · speed · torque; shaft power - gas power = losses · swept flow", () =>
    always(blowerShaftPower, (si, { shaftPower, torque, gasPower, lossPressure }) => [
      [shaftPower, 2 * Math.PI * si.blowerSpeed * torque],
      [shaftPower, gasPower + lossPressure * si.displacement * si.blowerSpeed],
    ]));

  test("torque depends on displacement and pressures alone where nothing is lost in the ports", () =>
    always(blowerShaftPower, (si) => {
      const slow = blowerShaftPower.si({ ...si, speedLoss: 0 });
      const fast = blowerShaftPower.si({ ...si, speedLoss: 0, blowerSpeed: 2 * si.blowerSpeed });
      return [
        [fast.torque, slow.torque],
        [fast.shaftPower, 2 * slow.shaftPower],
      ];
    }));
});

describe("blower-displacement-for-flow", () => {
  test("blower-flow gives the wanted air back", () =>
    always(blowerDisplacementForFlow, (si, { displacement, blowerSpeed, sweptFlow }) => {
      const flow = blowerFlow.si({ ...si, displacement });
      return [
        [flow.massFlow, si.massFlow],
        [flow.blowerSpeed, blowerSpeed],
        [flow.sweptFlow, sweptFlow],
      ];
    }));

  test("displacement · ratio is fixed", () =>
    always(blowerDisplacementForFlow, (si, { displacement }) => [
      [
        blowerDisplacementForFlow.si({ ...si, driveRatio: 2 * si.driveRatio }).displacement * 2 * si.driveRatio,
        displacement * si.driveRatio,
      ],
    ]));
});

describe("drive-ratio-for-flow", () => {
  test("the predicted operation at that speed gives the wanted air and temperature back", () =>
    always(
      driveRatioForFlow,
      (si, { driveRatio, blowerSpeed, volumetricEfficiency, dischargeTemperature }) => {
        const { volumetricEfficiency: least } = blowerLeastSpeed.si(si);
        // At the limit itself the air hangs on the speed with an infinite slope.
        if (volumetricEfficiency < 1.02 * least) return [];
        const found = blowerOperation.si({ ...si, blowerSpeed, steadyLoss: si.lossPressure, speedLoss: 0 });
        return [
          [found.massFlow, si.massFlow],
          [found.dischargeTemperature, dischargeTemperature],
          [driveRatio * si.engineSpeed, blowerSpeed],
        ];
      },
      1e-9,
    ));

  test("swept = delivered + leaked; without a leak the ratio is that of the bare volumes", () =>
    always(driveRatioForFlow, (si, { blowerSpeed, leakFlow }) => {
      const delivered = (si.massFlow * R * si.inletTemperature) / si.inletPressure;
      const tight = driveRatioForFlow.si({ ...si, leakCoefficient: 0 });
      return [
        [si.displacement * blowerSpeed, delivered + leakFlow],
        [tight.blowerSpeed * si.displacement, delivered],
      ];
    }));
});

describe("drive-ratio-for-boost", () => {
  test("what the blower delivers per time is what the engine swallows", () =>
    always(driveRatioForBoost, (si, { driveRatio }) => {
      const engineSpeed = 40;
      const { massFlow } = blowerFlow.si({
        displacement: si.displacement,
        engineSpeed,
        driveRatio,
        volumetricEfficiency: si.volumetricEfficiency,
        inletDensity: si.inletPressure / (R * si.inletTemperature),
      });
      const swallowed =
        (((si.engineVolumetricEfficiency * si.engineDisplacement * engineSpeed) / si.revolutionsPerCycle) *
          si.manifoldPressure) /
        (R * si.manifoldTemperature);
      return [[massFlow, swallowed]];
    }));

  test("thinner air by a share asks for a ratio higher by that share, for the same pressure", () =>
    always(driveRatioForBoost, (si, { driveRatio, sweptRatio }) => [
      [driveRatioForBoost.si({ ...si, inletPressure: si.inletPressure / 1.25 }).driveRatio, 1.25 * driveRatio],
      [sweptRatio * si.engineDisplacement, driveRatio * si.displacement * si.revolutionsPerCycle],
    ]));
});

describe("blower-least-speed", () => {
  test("at the limit swept = delivered + leaked, and the leak coefficient scales the speed", () =>
    always(blowerLeastSpeed, (si, { leastSpeed, volumetricEfficiency, dischargeTemperature }) => {
      if (si.leakCoefficient === 0) return [];
      const { leakFlow } = blowerLeakage.si({ ...si, blowerSpeed: 1, dischargeTemperature });
      const doubled = blowerLeastSpeed.si({ ...si, leakCoefficient: 2 * si.leakCoefficient });
      return [
        [si.displacement * leastSpeed * (1 - volumetricEfficiency), leakFlow],
        [doubled.leastSpeed, 2 * leastSpeed],
      ];
    }));

  test("(1 - eta) · sqrt((1 - 3 eta)/(1 - eta)) is the greatest cold leak over swept flow", () =>
    always(
      blowerLeastSpeed,
      (si, { leastSpeed, volumetricEfficiency: eta }) => {
        if (si.leakCoefficient === 0 || eta > 0.32) return [];
        const { leakFlow } = blowerLeakage.si({ ...si, blowerSpeed: 1, dischargeTemperature: si.inletTemperature });
        return [[leakFlow / (si.displacement * leastSpeed), Math.sqrt((1 - eta) * (1 - 3 * eta))]];
      },
      1e-10,
    ));
});

describe("blower-tip-speed", () => {
  test("tip speed over limit = speed over greatest speed", () =>
    always(blowerTipSpeed, (si, { tipSpeed, greatestSpeed, usedShare }) => [
      [usedShare, si.blowerSpeed / greatestSpeed],
      [usedShare * si.tipSpeedLimit, tipSpeed],
    ]));

  test("twice the diameter, twice the tip speed, half the greatest speed", () =>
    always(blowerTipSpeed, (si, { tipSpeed, greatestSpeed }) => {
      const larger = blowerTipSpeed.si({ ...si, rotorDiameter: 2 * si.rotorDiameter });
      return [
        [larger.tipSpeed, 2 * tipSpeed],
        [larger.greatestSpeed, greatestSpeed / 2],
      ];
    }));
});

describe("blower-pressure-for-temperature", () => {
  test("blower-discharge-temperature gives the limit back", () =>
    always(blowerPressureForTemperature, (si, { dischargePressure }) => [
      [blowerDischargeTemperature.si({ ...si, dischargePressure }).dischargeTemperature, si.temperatureLimit],
    ]));

  test("rise + discharge: p2 = p1 + rise; a warmer inlet leaves less", () =>
    always(blowerPressureForTemperature, (si, { dischargePressure, pressureRise }) => {
      const warmer = blowerPressureForTemperature.si({ ...si, inletTemperature: si.inletTemperature + 5 });
      expect(warmer.pressureRise).toBeLessThan(pressureRise);
      return [[dischargePressure, si.inletPressure + pressureRise]];
    }));
});

describe("blower-displacement-from-rotors", () => {
  test("all lengths times s: displacement times s³", () =>
    always(blowerDisplacementFromRotors, (si, { displacement }) => [
      [
        blowerDisplacementFromRotors.si({ ...si, rotorDiameter: 2 * si.rotorDiameter, rotorLength: 2 * si.rotorLength })
          .displacement,
        8 * displacement,
      ],
    ]));

  test("displacement · factor = diameter² · length", () =>
    always(blowerDisplacementFromRotors, (si, { displacement }) => {
      const box = si.rotorDiameter ** 2 * si.rotorLength;
      return [[displacement * si.formFactor, box]];
    }));
});
