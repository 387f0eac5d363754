import { kgPerM3, MPa, mm, mPerS, one, rpm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { guardCaution } from "./shared-inputs.ts";

const PERMITTED_STRESS_MPA = 6.9;

/**
 * Bursting stress in the rim of a pulley from its own speed, and the speed at a permitted stress.
 *
 * A thin ring that spins free: the stress depends on rim speed and density alone, not on how thick the rim is. Arms,
 * keyways, bores and casting flaws raise it; a pulley of unknown origin has all of them.
 *
 * @param args `outsideDiameter`, 20 to 5000 mm; `pulleySpeed`, 1 to 40 000 rpm; `density`, 900 to 20 000 kg/m³, or the
 *   name of a material; optional `permittedStress`, 0.1 to 1000 MPa.
 * @returns `rimSpeed`; `stress`; `greatestRimSpeed` and `greatestSpeed` at the permitted stress; `usedShare` of it.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const pulleyRimStress = /* @__PURE__ */ relation({
  id: "pulley-rim-stress",
  title: "Rim speed and bursting stress of a pulley",
  subject: "drive",
  summary:
    "Whether a pulley is safe to spin: its rim speed against a limit. For a cast iron pulley about 30 m/s is as fast as an old shop rule goes.",
  inputs: {
    outsideDiameter: {
      symbol: "d_o",
      unit: mm,
      meaning: "outside diameter of the pulley",
      range: [20, 5000],
      example: "141 mm",
    },
    pulleySpeed: {
      symbol: "n",
      unit: rpm,
      meaning: "greatest speed of the pulley",
      range: [1, 40000],
      example: "3600 rpm",
    },
    density: {
      symbol: "rho",
      unit: kgPerM3,
      meaning: "density of the pulley's material",
      range: [900, 20000],
      presets: {
        "grey cast iron": { value: 7200, spread: [7000, 7400], because: "usual handbook value, from memory" },
        steel: { value: 7850, spread: [7750, 7900], because: "usual handbook value, from memory" },
        aluminium: { value: 2700, spread: [2650, 2850], because: "usual handbook value, from memory" },
      },
      example: "grey cast iron",
    },
    permittedStress: {
      symbol: "sigma_max",
      unit: MPa.difference,
      meaning: "permitted stress in the rim",
      range: [0.1, 1000],
      default: {
        value: PERMITTED_STRESS_MPA,
        because: "1000 psi, as high as an old shop rule goes in a cast iron rim; cautious for steel and aluminium",
        source: "shop-practice-pulleys",
      },
      example: "6.9 MPa",
    },
  },
  outputs: {
    rimSpeed: { symbol: "v_r", unit: mPerS, meaning: "speed of the rim" },
    stress: { symbol: "sigma", unit: MPa.difference, meaning: "tensile stress in the rim" },
    greatestRimSpeed: { symbol: "v_max", unit: mPerS, meaning: "rim speed at the permitted stress" },
    greatestSpeed: { symbol: "n_max", unit: rpm, meaning: "pulley speed at the permitted stress" },
    usedShare: { symbol: "s_r", unit: one, meaning: "stress over the permitted one" },
  },
  constants: { pi },
  equations: [
    "v_r = pi * d_o * n",
    "sigma = rho * v_r^2",
    "v_max = sqrt(sigma_max / rho)",
    "n_max = v_max / (pi * d_o)",
    "s_r = sigma / sigma_max",
  ],
  sources: ["shop-practice-pulleys", "singer-pytel-139"],
  assumes: ["A thin ring without arms, keyway or flaw; belt pull not counted."],
  valid: [
    {
      what: "rim speed",
      of: ({ outsideDiameter, pulleySpeed }) => Math.PI * outsideDiameter * pulleySpeed,
      range: [0, 30.5],
      unit: "m/s",
      because:
        "100 ft/s is about the limit at which cast iron pulleys are safe against bursting; for another material the maker's limit counts",
      source: "shop-practice-pulleys",
    },
  ],
  cautions: [
    "A pulley that bursts throws its pieces through bonnet and bulkhead: never spin one of unknown make or with a crack, a weld or a home-cut keyway without a guard that would hold it.",
    guardCaution,
    "Count with the speed of an over-revving engine on a missed gear, not with the governed speed.",
  ],
  compute: ({ outsideDiameter, pulleySpeed, density, permittedStress = PERMITTED_STRESS_MPA * 1e6 }) => {
    const circumference = Math.PI * outsideDiameter;
    const rimSpeed = circumference * pulleySpeed;
    const stress = density * rimSpeed * rimSpeed;
    const greatestRimSpeed = Math.sqrt(permittedStress / density);
    return {
      rimSpeed,
      stress,
      greatestRimSpeed,
      greatestSpeed: greatestRimSpeed / circumference,
      usedShare: stress / permittedStress,
    };
  },
});
