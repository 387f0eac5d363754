import { kiloohm, mm, one, V } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const LOAD_KILOOHM = 1000;

/**
 * Position from the voltage of a potentiometer, the load at its wiper taken into account; undoes `potentiometerLoading`.
 *
 * @param args `voltage` at the wiper, 0 to 100 V; `supplyVoltage`, 0.5 to 100 V; `travel` of the wiper, 0.1 mm to 1 m;
 *   `trackResistance`, 10 Ω to 1 MΩ; optional `loadResistance`, 10 Ω to 1 GΩ, 1 MΩ if not given.
 * @returns `fraction` of the travel; `position`, counted from the ground end.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   output exceeds the supply or the load is below the track.
 */
export const potentiometerPosition = /* @__PURE__ */ relation({
  id: "potentiometer-position",
  title: "Position from a potentiometer",
  subject: "sensor",
  summary:
    "Where the rack or the pedal stands, from the wiper's voltage. Tracks wear where they work most: compare with a ruler now and then.",
  inputs: {
    voltage: { symbol: "V", unit: V, meaning: "voltage at the wiper", range: [0, 100], example: "2.97 ± 0.01 V" },
    supplyVoltage: {
      symbol: "V_s",
      unit: V,
      meaning: "voltage across the track",
      range: [0.5, 100],
      example: "5.00 ± 0.01 V",
    },
    travel: {
      symbol: "L",
      unit: mm,
      meaning: "travel of the wiper from end to end",
      range: [0.1, 1000],
      example: "10.0 mm",
    },
    trackResistance: {
      symbol: "R_p",
      unit: kiloohm,
      meaning: "resistance of the whole track",
      range: [0.01, 1000],
      example: "5.0 kΩ",
    },
    loadResistance: {
      symbol: "R_L",
      unit: kiloohm,
      meaning: "resistance from wiper to ground through the load",
      range: [0.01, 1e6],
      default: { value: LOAD_KILOOHM, because: "judgement for a converter's input; its data sheet goes before" },
      example: "100 kΩ",
    },
  },
  outputs: {
    fraction: { symbol: "x", unit: one, meaning: "position as a share of the travel" },
    position: { symbol: "s", unit: mm, meaning: "distance of the wiper from the ground end" },
  },
  steps: {
    k: { unit: "", meaning: "output over supply" },
    b: { unit: "", meaning: "one less output over supply times track over load" },
  },
  equations: ["k = V / V_s", "b = 1 - k * R_p / R_L", "x = 2 * k / (b + sqrt(b^2 + 4 * k^2 * R_p / R_L))", "s = x * L"],
  sources: ["wheeler-ganji"],
  assumes: ["A straight track, read against its own supply.", "The track's ends are the ends of the travel."],
  requires: [
    {
      inputs: ["voltage", "supplyVoltage"],
      says: "the output cannot exceed the supply",
      holds: ({ voltage, supplyVoltage }) => voltage <= supplyVoltage,
    },
    {
      inputs: ["trackResistance", "loadResistance"],
      says: "the load must be at least the track's resistance; one below would load it past use",
      holds: ({ trackResistance, loadResistance }) => loadResistance >= trackResistance,
    },
  ],
  valid: [
    {
      what: "output over supply",
      of: ({ voltage, supplyVoltage }) => voltage / supplyVoltage,
      range: [0.02, 0.98],
      unit: "",
      because:
        "judgement: at the very ends a wire off or a short looks the same; leave the stops short of the track's ends",
    },
  ],
  cautions: [
    "A controller that steers the fuel by this voltage must fall back to its safe position when the voltage leaves its band.",
  ],
  compute: ({ voltage, supplyVoltage, travel, trackResistance, loadResistance = LOAD_KILOOHM * 1000 }) => {
    const k = voltage / supplyVoltage;
    const loading = trackResistance / loadResistance;
    const b = 1 - k * loading;
    // The form of the quadratic's root that adds instead of taking a difference.
    const fraction = (2 * k) / (b + Math.sqrt(b * b + 4 * k * k * loading));
    return { fraction, position: fraction * travel };
  },
});
