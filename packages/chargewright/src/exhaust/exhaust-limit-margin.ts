import { degC, K } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { EXHAUST_LIMIT, exhaustLimit, fireCaution, meltingCaution } from "./shared-inputs.ts";

const ALLOWANCE = 90;

/**
 * Margin of an exhaust temperature, measured or estimated, to a chosen limit.
 *
 * What the temperature may be too low by comes off first: a sheathed probe reads 15 to 90 K low, the estimate of
 * `exhaustTemperature` has a band of 100 K.
 *
 * @param args `temperature`, -40 to 1200 °C; optional `exhaustLimit`, 100 to 1200 °C, or a named one; optional
 *   `allowance`, 0 to 300 K, or the name of what the temperature comes from.
 * @returns `margin`, negative beyond the limit; `permittedReading`, the value at which to lift off.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Radiation balance of a sheathed thermocouple, relation exhaust-probe-error.
 */
export const exhaustLimitMargin = /* @__PURE__ */ relation({
  id: "exhaust-limit-margin",
  title: "Margin to an exhaust-temperature limit",
  subject: "exhaust",
  summary:
    "How many degrees are left, after allowing for what the probe or the estimate may be too low by. The reading at which to lift off belongs on the dashboard.",
  inputs: {
    temperature: {
      symbol: "T_r",
      unit: degC,
      meaning: "exhaust temperature, as measured or estimated",
      range: [-40, 1200],
      example: "440 ± 5 °C",
    },
    exhaustLimit: {
      ...exhaustLimit,
      meaning: "temperature that the exhaust must not exceed",
      range: [100, 1200],
    },
    allowance: {
      symbol: "Delta_a",
      unit: K.difference,
      meaning: "what the temperature may be too low by",
      range: [0, 300],
      default: {
        value: ALLOWANCE,
        spread: [15, 90],
        because: "a sheathed probe in a bare manifold, cautious end",
        source: "churchill-bernstein-1977",
      },
      presets: {
        "sheathed probe": {
          value: 90,
          spread: [15, 90],
          because: "computed for sheaths of 1.5 to 6 mm at 500 to 700 °C, cautious end",
          source: "churchill-bernstein-1977",
        },
        "estimate at load": { value: 100, because: "two standard deviations of the exhaust-temperature estimate" },
        "limit meant for this probe": {
          value: 0,
          because: "a limit stated as the reading of a like probe in the same place",
        },
      },
      example: "sheathed probe",
    },
  },
  outputs: {
    margin: { symbol: "M", unit: K.difference, meaning: "margin to the limit; negative beyond it" },
    permittedReading: { symbol: "T_p", unit: degC, meaning: "value at which the limit may be reached" },
  },
  equations: ["T_p = T_lim - Delta_a", "M = T_lim - T_r - Delta_a"],
  sources: ["churchill-bernstein-1977", "heywood-fundamentals"],
  assumes: ["One cylinder runs hotter than the others: a probe in the collector does not see it."],
  valid: [
    {
      what: "limit",
      of: ({ exhaustLimit }) => exhaustLimit - 273.15,
      range: [400, 750],
      unit: "°C",
      because:
        "650 to 700 °C sustained and 750 °C for a short time are what small engines are said to stand, from memory",
      source: "heywood-fundamentals",
    },
  ],
  cautions: [meltingCaution, fireCaution],
  compute: ({ temperature, exhaustLimit = EXHAUST_LIMIT + 273.15, allowance = ALLOWANCE }) => ({
    margin: exhaustLimit - temperature - allowance,
    permittedReading: exhaustLimit - allowance,
  }),
});
