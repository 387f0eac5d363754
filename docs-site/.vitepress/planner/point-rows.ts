import { fromSi, kPa, type Quantity } from "@chargewright/quantities";
import type { OperatingPoint, Station } from "chargewright/build";

/** A row of the table at one speed. */
export interface PointRow {
  readonly label: string;
  readonly value: (point: OperatingPoint) => Quantity | undefined;
  /** The name under which the point knows the relation's call that gave it. */
  readonly call?: string;
}

/** Rows that belong together. */
export interface PointGroup {
  readonly title: string;
  readonly rows: readonly PointRow[];
}

type Place = keyof OperatingPoint["stations"];

const gauge = ({ stations: { ambient } }: OperatingPoint, { pressure }: Station) =>
  fromSi(pressure.si - ambient.pressure.si, kPa.gauge);

function station(
  title: string,
  place: Place,
  calls: { readonly temperature?: string; readonly density?: string } = {},
) {
  const at = ({ stations }: OperatingPoint) => stations[place];
  const called = (call: string | undefined) => (call === undefined ? {} : { call });
  return {
    title,
    rows: [
      {
        label: "Pressure, absolute",
        value: (point) => at(point).pressure,
        ...(place === "ambient" ? { call: "ambientPressure" } : {}),
      },
      ...(place === "ambient"
        ? []
        : [{ label: "Pressure, gauge", value: (point: OperatingPoint) => gauge(point, at(point)) }]),
      { label: "Temperature", value: (point) => at(point).temperature, ...called(calls.temperature) },
      { label: "Density", value: (point) => at(point).density, ...called(calls.density) },
    ],
  } satisfies PointGroup;
}

/** All that the table says of an operating point, along the charge air's way and on to the road. */
export const pointGroups: readonly PointGroup[] = [
  station("Outside", "ambient", { density: "ambientDensity" }),
  station("Before the blower", "blowerIn"),
  station("Behind the blower", "blowerOut", { temperature: "dischargeTemperature" }),
  station("Behind the cooler", "coolerOut", { temperature: "coolerOutletTemperature" }),
  station("Manifold", "manifold", { density: "manifoldDensity" }),
  {
    title: "Air",
    rows: [
      { label: "Through the blower", value: ({ massFlow }) => massFlow, call: "massFlow" },
      { label: "Through the relief valve", value: ({ reliefFlow }) => reliefFlow },
      { label: "Into the engine", value: ({ engineFlow }) => engineFlow, call: "engineFlow" },
    ],
  },
  {
    title: "Blower and cooler",
    rows: [
      { label: "Blower speed", value: ({ blowerSpeed }) => blowerSpeed },
      {
        label: "Blower volumetric efficiency",
        value: (point) => point.blowerVolumetricEfficiency,
        call: "blowerVolumetricEfficiency",
      },
      { label: "Blower power", value: ({ blowerPower }) => blowerPower, call: "blowerPower" },
      { label: "Blower power over brake power", value: ({ blowerShare }) => blowerShare },
      { label: "Cooler effectiveness", value: (point) => point.coolerEffectiveness, call: "coolerEffectiveness" },
      { label: "Heat out of the charge", value: ({ coolerHeat }) => coolerHeat, call: "coolerHeat" },
    ],
  },
  {
    title: "Engine",
    rows: [
      { label: "Fuel", value: ({ fuelMassFlow }) => fuelMassFlow, call: "fuelMassFlow" },
      { label: "Air-fuel ratio", value: ({ airFuelRatio }) => airFuelRatio, call: "airFuelRatio" },
      {
        label: "Exhaust temperature, with the model's band",
        value: (point) => point.exhaustTemperature,
        call: "exhaustTemperature",
      },
      {
        label: "Upper end of that band",
        value: (point) => point.cautiousExhaustTemperature,
        call: "exhaustTemperature",
      },
      { label: "Brake power", value: ({ brakePower }) => brakePower, call: "brakePower" },
      { label: "Torque", value: ({ torque }) => torque, call: "torque" },
      {
        label: "Brake mean effective pressure",
        value: (point) => point.brakeMeanEffectivePressure,
        call: "brakeMeanEffectivePressure",
      },
      { label: "Economy", value: ({ economy }) => economy, call: "economy" },
      {
        label: "End of compression, pressure",
        value: (point) => point.compressionPressure,
        call: "compressionPressure",
      },
      {
        label: "End of compression, temperature",
        value: (point) => point.compressionTemperature,
        call: "compressionTemperature",
      },
    ],
  },
  {
    title: "Ducts",
    rows: [
      { label: "Mach number", value: ({ ductMach }) => ductMach, call: "ductMach" },
      { label: "Thrust at the end of a hose", value: ({ hoseEndThrust }) => hoseEndThrust, call: "hoseEndThrust" },
    ],
  },
];

/** The groups and rows for which some of the points have a value. */
export function rowsFor(points: readonly OperatingPoint[]): readonly PointGroup[] {
  return pointGroups
    .map(({ title, rows }) => ({
      title,
      rows: rows.filter(({ value }) => points.some((point) => value(point) !== undefined)),
    }))
    .filter(({ rows }) => rows.length > 0);
}
