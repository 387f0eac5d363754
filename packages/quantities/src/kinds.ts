/** What is known of a kind of quantity. */
export interface KindFacts {
  /** The name in words, as it stands in messages. */
  readonly name: string;
  /** Symbol of the coherent SI unit in which `si` is counted. */
  readonly si: string;
  /** A text of this kind that can be read, for messages. */
  readonly example: string;
}

/**
 * The kinds of quantity, in the sense of ISO 80000-1: quantities of one kind may be compared and added; those that
 * only share a dimension may not. Rotational speed is the rotational frequency of ISO 80000-3, so that displacement
 * per revolution times rotational speed is a volume flow.
 */
export const kinds = {
  length: { si: "m", example: "300 mm" },
  area: { si: "m²", example: "540 cm2" },
  volume: { si: "m³", example: "1120 cc" },
  volumePerRevolution: { si: "m³/rev", example: "0.62 L/rev" },
  mass: { si: "kg", example: "690 kg" },
  massPerStroke: { si: "kg/stroke", example: "18 mg/stroke" },
  volumePerStroke: { si: "m³/stroke", example: "22 mm3/stroke" },
  massPerLength: { si: "kg/m", example: "165 g/km" },
  massPerVolume: { si: "kg/m³", example: "45 mg/L" },
  massPerFuelVolume: { si: "kg/m³", example: "2.68 kg/L" },
  time: { si: "s", example: "12 s" },
  frequency: { si: "Hz", example: "400 Hz" },
  frequencyRate: { si: "steps/s²", example: "2000 steps/s2" },
  speed: { si: "m/s", example: "56 mph" },
  acceleration: { si: "m/s²", example: "1.2 m/s2" },
  rotationalSpeed: { si: "rev/s", example: "3600 rpm" },
  force: { si: "N", example: "120 N" },
  forcePerSpeed: { si: "N·s/m", example: "1.5 N s/m" },
  forcePerSpeedSquared: { si: "N·s²/m²", example: "0.42 N/(m/s)2" },
  springRate: { si: "N/m", example: "5 N/mm" },
  torque: { si: "N·m", example: "65 N m" },
  absolutePressure: { si: "Pa", example: "84 kPa absolute" },
  gaugePressure: { si: "Pa", example: "10 psi gauge" },
  pressureDifference: { si: "Pa", example: "14 kPa" },
  temperature: { si: "K", example: "38 °C" },
  temperatureDifference: { si: "K", example: "45 °C difference" },
  density: { si: "kg/m³", example: "1.19 kg/m3" },
  volumeFlow: { si: "m³/s", example: "120 cfm" },
  standardVolumeFlow: { si: "m³/s at 0 °C, 101.325 kPa", example: "200 Nm3/h" },
  massFlow: { si: "kg/s", example: "55 g/s" },
  energy: { si: "J", example: "36 MJ" },
  power: { si: "W", example: "19 kW" },
  specificHeatCapacity: { si: "J/(kg·K)", example: "1005 J/(kg K)" },
  heatCapacity: { si: "J/K", example: "2.7 kJ/K" },
  thermalConductance: { si: "W/K", example: "85 W/K" },
  heatingValue: { si: "J/kg", example: "42.7 MJ/kg" },
  specificEnergy: { si: "J/kg", example: "67 kJ/kg" },
  energyPerVolume: { si: "J/m³", example: "35.8 MJ/L" },
  dynamicViscosity: { si: "Pa·s", example: "18.2 µPa s" },
  kinematicViscosity: { si: "m²/s", example: "3.0 cSt" },
  thermalConductivity: { si: "W/(m·K)", example: "0.026 W/(m K)" },
  fuelEconomy: { si: "m/m³", example: "58 mpg (imperial)" },
  specificFuelConsumption: { si: "kg/J", example: "265 g/kWh" },
  absorptionCoefficient: { si: "1/m", example: "1.5 1/m" },
  angle: { si: "rad", example: "160°" },
  voltage: { si: "V", example: "4.096 mV" },
  current: { si: "A", example: "1.2 A" },
  resistance: { si: "Ω", example: "2.2 kΩ" },
  ratio: { si: "", example: "0.72" },
} as const satisfies Record<string, Omit<KindFacts, "name">>;

/** The name of a kind of quantity. */
export type Kind = keyof typeof kinds;

/**
 * The name of a kind in words: "absolute pressure".
 *
 * Taken from its identifier, so that code which only computes does not carry the table of kinds along.
 */
export function kindName(kind: Kind): string {
  return kind.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** The least value of a kind that can exist, in SI: zero where it counts from an absolute zero. */
export function leastOf(kind: Kind): number {
  return kind === "absolutePressure" || kind === "temperature" ? 0 : -Number.MAX_VALUE;
}

/** The facts of a kind, whatever kind it is. */
export function kindFacts(kind: Kind): KindFacts {
  return { name: kindName(kind), ...kinds[kind] };
}

type Family<K extends Kind> = K extends "absolutePressure" | "gaugePressure" | "pressureDifference"
  ? "absolutePressure" | "gaugePressure" | "pressureDifference"
  : K;

/** The kinds whose units can express a quantity of kind `K`: the three pressures share theirs, all others keep to themselves. */
export type Expressible<K extends Kind> = Family<K>;

const pressures: ReadonlySet<Kind> = new Set<Kind>(["absolutePressure", "gaugePressure", "pressureDifference"]);

/** Whether a number in a unit of kind `unit` can express a quantity of kind `quantity`. */
export function expressible(quantity: Kind, unit: Kind): boolean {
  return quantity === unit || (pressures.has(quantity) && pressures.has(unit));
}
