import { fromSi, kPa, type Quantity } from "@chargewright/quantities";
import type { Build, OperatingPoint, Station } from "chargewright/build";

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
  /** The section of the description without which they say nothing. */
  readonly needs?: keyof Build;
  readonly rows: readonly PointRow[];
}

type Place = keyof OperatingPoint["stations"];

const gauge = ({ stations: { ambient } }: OperatingPoint, { pressure }: Station) =>
  fromSi(pressure.si - ambient.pressure.si, kPa.gauge);

/** The rows of a station, each with the name of the call that opens it where one does. */
function station(
  place: Place,
  calls: { readonly [R in "pressure" | "temperature" | "density"]?: string } = {},
): PointRow[] {
  const at = ({ stations }: OperatingPoint) => stations[place];
  const opened = (call: string | undefined) => (call === undefined ? {} : { call });
  return [
    { label: "Pressure, absolute", value: (point) => at(point).pressure, ...opened(calls.pressure) },
    ...(place === "ambient"
      ? []
      : [{ label: "Pressure, gauge", value: (point: OperatingPoint) => gauge(point, at(point)) }]),
    { label: "Temperature", value: (point) => at(point).temperature, ...opened(calls.temperature) },
    { label: "Density", value: (point) => at(point).density, ...opened(calls.density) },
  ];
}

/** All that the table says of an operating point, along the charge air's way and on to the road. */
export const pointGroups: readonly PointGroup[] = [
  { title: "Outside", rows: station("ambient", { pressure: "ambientPressure", density: "ambientDensity" }) },
  { title: "Before the blower", needs: "blower", rows: station("blowerIn") },
  { title: "Behind the blower", needs: "blower", rows: station("blowerOut", { temperature: "dischargeTemperature" }) },
  {
    title: "Behind the cooler",
    needs: "cooler",
    rows: station("coolerOut", { temperature: "coolerOutletTemperature" }),
  },
  { title: "Manifold", rows: station("manifold", { density: "manifoldDensity" }) },
  {
    title: "Air",
    rows: [
      { label: "Through the filter", value: ({ massFlow }) => massFlow, call: "massFlow" },
      { label: "Through the relief valve", value: ({ reliefFlow }) => reliefFlow },
      { label: "Into the engine", value: ({ engineFlow }) => engineFlow, call: "engineFlow" },
    ],
  },
  {
    title: "Blower",
    needs: "blower",
    rows: [
      { label: "Blower speed", value: ({ blowerSpeed }) => blowerSpeed },
      {
        label: "Blower volumetric efficiency",
        value: (point) => point.blowerVolumetricEfficiency,
        call: "blowerVolumetricEfficiency",
      },
      { label: "Blower power", value: ({ blowerPower }) => blowerPower, call: "blowerPower" },
      { label: "Blower power over brake power", value: ({ blowerShare }) => blowerShare },
    ],
  },
  {
    title: "Cooler",
    needs: "cooler",
    rows: [
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
    needs: "ducts",
    rows: [
      { label: "Mach number", value: ({ ductMach }) => ductMach, call: "ductMach" },
      { label: "Thrust at the end of a hose", value: ({ hoseEndThrust }) => hoseEndThrust, call: "hoseEndThrust" },
    ],
  },
];

/** The groups and rows for which some of the points, each with the build that it is of, have a value. */
export function rowsFor(
  points: readonly { readonly point: OperatingPoint; readonly build: Build }[],
): readonly PointGroup[] {
  return pointGroups.flatMap((group) => {
    const described = points.filter(({ build }) => group.needs === undefined || build[group.needs] !== undefined);
    const rows = group.rows.filter(({ value }) => described.some(({ point }) => value(point) !== undefined));
    return rows.length === 0 ? [] : [{ ...group, rows }];
  });
}
