import { deg, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { degrees, fadingCaution, guardCaution } from "./shared-inputs.ts";

const FRICTION = 0.25;
const GROOVE_ANGLE_DEG = 40;
const LIMIT_RATIO = 4;

/**
 * Ratio of belt tensions at which a belt begins to slip, and the ratio that a drive may be laid out for.
 *
 * The capstan law, with the friction of a groove raised by its wedge. Ribs of a V-ribbed belt wedge only in part: the
 * law promises 6 to 12 where drives are laid out for about 4, so the answer is capped.
 *
 * @param args `wrap` on the pulley, 10 to 1080°; optional `friction` of belt on pulley, 0.02 to 1.5; `grooveAngle`, full
 *   angle between the flanks, 20 to 180°, or the name of a belt; `limitRatio`, 1.05 to 1 000 000.
 * @returns `effectiveFriction`; `slipRatio`, tight over slack at the point of slip; `usableRatio`, capped.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const beltTensionRatio = /* @__PURE__ */ relation({
  id: "belt-tension-ratio",
  title: "Tension ratio at the point of slip",
  subject: "drive",
  summary:
    "How much tighter the pulling side may be than the slack side before the belt slides, by wrap and friction, and what to count on.",
  inputs: {
    wrap: {
      symbol: "theta",
      unit: deg,
      meaning: "wrap of the belt on the pulley that slips first, the one with the smaller wrap",
      range: [10, 1080],
      example: "170°",
    },
    friction: {
      symbol: "mu",
      unit: one,
      meaning: "coefficient of friction between belt and pulley",
      range: [0.02, 1.5],
      default: {
        value: FRICTION,
        spread: [0.15, 0.4],
        because:
          "judgement near the cautious end; the worked problems used as checks here take 0.12 to 0.4, and oil takes most of it",
        source: "khurmi-theory-of-machines",
      },
      example: "0.25",
    },
    grooveAngle: {
      symbol: "beta",
      unit: deg,
      meaning: "full angle between the flanks of a groove; 180° for a flat belt",
      range: [20, 180],
      default: {
        value: GROOVE_ANGLE_DEG,
        because: "groove angle of V-ribbed pulleys, from memory: not seen in a standard",
      },
      presets: {
        "V-ribbed": { value: 40, because: "groove angle of V-ribbed pulleys, from memory: not seen in a standard" },
        "flat belt": { value: 180, because: "no wedge" },
      },
      example: "V-ribbed",
    },
    limitRatio: {
      symbol: "k_lim",
      unit: one,
      meaning: "ratio that is not to be exceeded, whatever the law of friction promises",
      range: [1.05, 1000000],
      default: {
        value: LIMIT_RATIO,
        because: "judgement: what V-ribbed drives are laid out for, as the wedging of the ribs is incomplete",
      },
      example: "4",
    },
  },
  outputs: {
    effectiveFriction: { symbol: "mu_e", unit: one, meaning: "effective coefficient of friction in the groove" },
    slipRatio: { symbol: "k_s", unit: one, meaning: "tension ratio at the point of slip, tight over slack" },
    usableRatio: { symbol: "k", unit: one, meaning: "tension ratio to count on" },
  },
  equations: ["mu_e = mu / sin(beta / 2)", "k_s = exp(mu_e * theta)", "k = min(k_s, k_lim)"],
  sources: ["v-belt-formula-sheet", "khurmi-theory-of-machines"],
  assumes: [
    "Full, even contact of the flanks; friction the same all along the wrap.",
    "Tensions less their centrifugal part.",
  ],
  valid: [
    {
      what: "wrap",
      of: ({ wrap }) => degrees(wrap),
      range: [120, 240],
      unit: "°",
      because: "judgement: with less wrap use an idler; more is not had with two pulleys",
    },
  ],
  cautions: [guardCaution, fadingCaution],
  compute: ({ wrap, friction = FRICTION, grooveAngle = deg.toSi(GROOVE_ANGLE_DEG), limitRatio = LIMIT_RATIO }) => {
    const effectiveFriction = friction / Math.sin(grooveAngle / 2);
    const slipRatio = Math.exp(effectiveFriction * wrap);
    return { effectiveFriction, slipRatio, usableRatio: Math.min(slipRatio, limitRatio) };
  },
});
