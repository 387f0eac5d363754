import { describe, expect, it } from "vitest";
import { type CheckRecord, evaluateRecord } from "./evaluate-record.ts";

const units = (value: string, stated: string, more: Partial<CheckRecord> = {}): CheckRecord =>
  ({
    id: "record",
    unit: true,
    kind: "pressureDifference",
    title: "A unit",
    provenance: "published",
    cases: [{ inputs: { value }, expected: { value: stated } }],
    ...more,
  }) as CheckRecord;

const only = (record: CheckRecord) => {
  const [first] = evaluateRecord(record);
  if (first === undefined) throw new Error("no case");
  return first;
};

describe("evaluateRecord", () => {
  it("allows half a unit of the last stated digit, either way", () => {
    // 1 psi is 6894.757293 Pa.
    expect(only(units("1 psi", "6895 Pa")).within).toBe(true);
    expect(only(units("1 psi", "6894.8 Pa")).within).toBe(true);
    expect(only(units("1 psi", "6894.7 Pa")).within).toBe(false);
    expect(only(units("1 psi", "6896 Pa")).within).toBe(false);
    expect(only(units("1 psi", "6895 Pa")).allowed).toBeCloseTo(0.5 / 6895, 12);
  });

  it("allows a whole unit upwards where the source truncates", () => {
    const truncated = { rounding: "truncated" } as const;
    expect(only(units("1 psi", "6894 Pa", truncated)).within).toBe(true);
    expect(only(units("1 psi", "6895 Pa", truncated)).within).toBe(false);
    expect(only(units("-1 psi", "-6894 Pa", truncated)).within).toBe(true);
    expect(only(units("-1 psi", "-6895 Pa", truncated)).within).toBe(false);
  });

  it("truncates in the unit of the source, also where that counts the other way up", () => {
    const economy = (stated: string) =>
      only(units("10 mpg (US)", stated, { kind: "fuelEconomy", rounding: "truncated" } as Partial<CheckRecord>)).within;
    // 23.5214583 L/100 km
    expect(economy("23.52 L/100 km")).toBe(true);
    expect(economy("23.53 L/100 km")).toBe(false);
  });

  it("takes the record's own tolerance where it has one", () => {
    const tolerance = { relative: 0.01, because: "a test" };
    const evaluated = only(units("1 psi", "6850 Pa", { tolerance }));
    expect(evaluated.within).toBe(true);
    expect(evaluated.allowed).toBe(0.01);
    expect(evaluated.deviation).toBeCloseTo(6894.757293 / 6850 - 1, 9);
  });

  it("holds an exact statement of many digits to be within in spite of rounding", () => {
    expect(only(units("1 psi", "6894.757293168361 Pa")).within).toBe(true);
    expect(only(units("-40 °F", "-40 °C", { kind: "temperature" } as Partial<CheckRecord>)).within).toBe(true);
  });

  it("runs a relation", () => {
    const record: CheckRecord = {
      id: "sea-level",
      relation: "air-density",
      title: "Sea level",
      provenance: "published",
      cases: [
        {
          inputs: { pressure: "101325 Pa absolute", temperature: "288.15 K" },
          expected: { density: "1.2250 kg/m3" },
        },
      ],
    };
    expect(only(record)).toMatchObject({ output: "density", statedText: "1.2250 kg/m3", within: true });
    expect(() => evaluateRecord({ ...record, relation: "no-such" })).toThrow(/no relation no-such/);
  });
});
