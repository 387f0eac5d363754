/** What is known of a kind of quantity. */
export interface KindFacts {
  /** The name in words, as it stands in messages. */
  readonly name: string;
  /** Symbol of the coherent SI unit in which `si` is counted. */
  readonly si: string;
  /** The least value that can exist, in SI, where physics sets one. */
  readonly least?: number;
  /** A text of this kind that can be read, for messages. */
  readonly example: string;
}

/**
 * The kinds of quantity, in the sense of ISO 80000-1: quantities of one kind may be compared and added; those that
 * only share a dimension may not. Rotational speed is the rotational frequency of ISO 80000-3, so that displacement
 * per revolution times rotational speed is a volume flow.
 */
export const kinds = {
  length: { name: "length", si: "m", example: "300 mm" },
  area: { name: "area", si: "m²", example: "540 cm2" },
  volume: { name: "volume", si: "m³", example: "1120 cc" },
  volumePerRevolution: { name: "volume per revolution", si: "m³/rev", example: "0.62 L/rev" },
  mass: { name: "mass", si: "kg", example: "690 kg" },
  massPerStroke: { name: "mass per stroke", si: "kg/stroke", example: "18 mg/stroke" },
  volumePerStroke: { name: "volume per stroke", si: "m³/stroke", example: "22 mm3/stroke" },
  massPerLength: { name: "mass per length", si: "kg/m", example: "165 g/km" },
  massPerVolume: { name: "mass per volume of charge", si: "kg/m³", example: "45 mg/L" },
  massPerFuelVolume: { name: "mass per volume of fuel", si: "kg/m³", example: "2.68 kg/L" },
  time: { name: "time", si: "s", example: "12 s" },
  frequency: { name: "frequency", si: "Hz", example: "400 Hz" },
  speed: { name: "speed", si: "m/s", example: "56 mph" },
  acceleration: { name: "acceleration", si: "m/s²", example: "1.2 m/s2" },
  rotationalSpeed: { name: "rotational speed", si: "rev/s", example: "3600 rpm" },
  force: { name: "force", si: "N", example: "120 N" },
  forcePerSpeed: { name: "force per speed", si: "N·s/m", example: "1.5 N s/m" },
  forcePerSpeedSquared: { name: "force per speed squared", si: "N·s²/m²", example: "0.42 N/(m/s)2" },
  springRate: { name: "spring rate", si: "N/m", example: "5 N/mm" },
  torque: { name: "torque", si: "N·m", example: "65 N m" },
  absolutePressure: { name: "absolute pressure", si: "Pa", least: 0, example: "84 kPa absolute" },
  gaugePressure: { name: "gauge pressure", si: "Pa", example: "10 psi gauge" },
  pressureDifference: { name: "pressure difference", si: "Pa", example: "14 kPa" },
  temperature: { name: "temperature", si: "K", least: 0, example: "38 °C" },
  temperatureDifference: { name: "temperature difference", si: "K", example: "45 °C difference" },
  density: { name: "density", si: "kg/m³", example: "1.19 kg/m3" },
  volumeFlow: { name: "actual volume flow", si: "m³/s", example: "120 cfm" },
  standardVolumeFlow: { name: "standard volume flow", si: "m³/s at 0 °C, 101.325 kPa", example: "200 Nm3/h" },
  massFlow: { name: "mass flow", si: "kg/s", example: "55 g/s" },
  energy: { name: "energy", si: "J", example: "36 MJ" },
  power: { name: "power", si: "W", example: "19 kW" },
  specificHeatCapacity: { name: "specific heat capacity", si: "J/(kg·K)", example: "1005 J/(kg K)" },
  heatCapacity: { name: "heat capacity", si: "J/K", example: "2.7 kJ/K" },
  thermalConductance: { name: "thermal conductance", si: "W/K", example: "85 W/K" },
  heatingValue: { name: "heating value", si: "J/kg", example: "42.7 MJ/kg" },
  energyPerVolume: { name: "energy per volume", si: "J/m³", example: "35.8 MJ/L" },
  dynamicViscosity: { name: "dynamic viscosity", si: "Pa·s", example: "18.2 µPa s" },
  kinematicViscosity: { name: "kinematic viscosity", si: "m²/s", example: "3.0 cSt" },
  thermalConductivity: { name: "thermal conductivity", si: "W/(m·K)", example: "0.026 W/(m K)" },
  fuelEconomy: { name: "fuel economy", si: "m/m³", example: "58 mpg (imperial)" },
  specificFuelConsumption: { name: "specific fuel consumption", si: "kg/J", example: "265 g/kWh" },
  absorptionCoefficient: { name: "light absorption coefficient", si: "1/m", example: "1.5 1/m" },
  angle: { name: "angle", si: "rad", example: "160°" },
  voltage: { name: "voltage", si: "V", example: "4.096 mV" },
  current: { name: "electric current", si: "A", example: "1.2 A" },
  resistance: { name: "resistance", si: "Ω", example: "2.2 kΩ" },
  ratio: { name: "ratio", si: "", example: "0.72" },
} as const satisfies Record<string, KindFacts>;

/** The name of a kind of quantity. */
export type Kind = keyof typeof kinds;

/** The facts of a kind, whatever kind it is. */
export function kindFacts(kind: Kind): KindFacts {
  return kinds[kind];
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
