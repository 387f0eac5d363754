import { ChargewrightError, fromSi, one, Quantity } from "@chargewright/quantities";

/** One point of a thermistor: what the ohmmeter showed in a bath of known temperature. */
export interface ThermistorPoint {
  readonly temperature: Quantity<"temperature">;
  readonly resistance: Quantity<"resistance">;
}

/** Coefficients of the Steinhart-Hart equation, per kelvin, for resistance in ohms; inputs of `steinhartHartTemperature`. */
export interface SteinhartHartCoefficients {
  readonly constant: Quantity<"ratio">;
  readonly linear: Quantity<"ratio">;
  readonly cubic: Quantity<"ratio">;
}

/**
 * The Steinhart-Hart coefficients of a thermistor through three measured points, exact at each.
 *
 * Choose them at the two ends and in the middle of the span that matters: ice water, blood warm, and hot. The ± of the
 * points plays no part.
 *
 * @param points three points, in any order, each 1 Ω to 10 MΩ and -80 to 300 °C.
 * @throws ChargewrightError `missing-input` for other than three points; `wrong-kind` and `out-of-range` naming the
 *   point; `contradiction` where a warmer point is not lower in resistance, or no thermistor curve passes through all
 *   three, as with points too close or misread.
 * @see Steinhart and Hart, Deep-Sea Research 15 (1968) 497-503.
 */
export function steinhartHartFit(points: readonly ThermistorPoint[]): SteinhartHartCoefficients {
  if (!Array.isArray(points) || points.length !== 3)
    throw new ChargewrightError("missing-input", "needs three points of temperature and resistance", {
      input: "points",
      value: points,
    });
  const sorted = points.map(numbers).sort((a, b) => a.kelvin - b.kelvin) as [Numbers, Numbers, Numbers];
  const [first, second, third] = sorted;
  for (const [cold, warm] of [
    [first, second],
    [second, third],
  ] as const)
    if (!(warm.kelvin > cold.kelvin && warm.log < cold.log))
      throw new ChargewrightError("contradiction", "a warmer point must be lower in resistance", {
        input: warm.name,
        value: points,
      });
  // Divided differences of 1/T over ln R, taken without cancelling reciprocals.
  const slope = (a: Numbers, b: Numbers) => (a.kelvin - b.kelvin) / (a.kelvin * b.kelvin) / (b.log - a.log);
  const near = slope(first, second);
  const far = slope(first, third);
  const cubic = (far - near) / (third.log - second.log) / (first.log + second.log + third.log);
  const linear = near - cubic * (first.log ** 2 + first.log * second.log + second.log ** 2);
  const constant = 1 / first.kelvin - (linear + cubic * first.log ** 2) * first.log;
  if (!(cubic > 0 && linear > 0 && constant > 0))
    throw new ChargewrightError(
      "contradiction",
      "no thermistor curve passes through these points: they are too close together, or one is misread",
      { input: "points", value: points },
    );
  return { constant: fromSi(constant, one), linear: fromSi(linear, one), cubic: fromSi(cubic, one) };
}

interface Numbers {
  readonly name: string;
  readonly kelvin: number;
  readonly log: number;
}

function numbers({ temperature, resistance }: ThermistorPoint, index: number): Numbers {
  const name = `points[${index}]`;
  if (!(temperature instanceof Quantity && temperature.kind === "temperature"))
    throw new ChargewrightError("wrong-kind", "needs a temperature, such as degC(25)", {
      input: `${name}.temperature`,
      value: temperature,
    });
  if (!(resistance instanceof Quantity && resistance.kind === "resistance"))
    throw new ChargewrightError("wrong-kind", "needs a resistance, such as kiloohm(10)", {
      input: `${name}.resistance`,
      value: resistance,
    });
  if (!(temperature.si >= 193.15 && temperature.si <= 573.15))
    throw new ChargewrightError("out-of-range", "needs a temperature from -80 to 300 °C", {
      input: `${name}.temperature`,
      value: temperature,
      range: "from -80 to 300 °C",
    });
  if (!(resistance.si >= 1 && resistance.si <= 1e7))
    throw new ChargewrightError("out-of-range", "needs a resistance from 1 Ω to 10 MΩ", {
      input: `${name}.resistance`,
      value: resistance,
      range: "from 1 Ω to 10 MΩ",
    });
  return { name, kelvin: temperature.si, log: Math.log(resistance.si) };
}
