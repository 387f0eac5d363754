import { kPa, one, read, rpm } from "@chargewright/quantities";
import { describe, expect, it } from "vitest";
import { composed, converted, isNumberAlone, ownUnit, parted } from "./field.ts";

const pressure = { text: "93.9", plusMinus: "0.2", unit: "kPa" };

describe("composed", () => {
  it("joins number, ± and the menu's unit", () => {
    const quantity = read(composed(pressure, "absolutePressure"), "absolutePressure");
    expect(quantity.in(kPa)).toBe(93.9);
    expect(quantity.uncertaintyIn(kPa)).toBeCloseTo(0.2, 12);
  });

  it("lets a unit typed into the box win over the menu", () => {
    const quantity = read(composed({ text: "180 °F", plusMinus: "2", unit: "°C" }, "temperature"), "temperature");
    expect(quantity.unit.symbol).toBe("°F");
    expect(quantity.uncertaintyIn(quantity.unit)).toBeCloseTo(2, 12);
  });

  it("lets a ± typed into the box win over the ± box", () => {
    const quantity = read(composed({ ...pressure, text: "93.9 ± 0.5" }, "absolutePressure"), "absolutePressure");
    expect(quantity.uncertaintyIn(kPa)).toBeCloseTo(0.5, 12);
  });

  it("takes a ± in percent of the value, and in points where the value is in percent", () => {
    expect(
      read(composed({ ...pressure, plusMinus: "2 %" }, "absolutePressure"), "absolutePressure").uncertaintyIn(kPa),
    ).toBeCloseTo(1.878, 9);
    const humidity = read(composed({ text: "60", plusMinus: "5", unit: "%" }, "ratio"), "ratio");
    expect(humidity.uncertaintyIn(one)).toBeCloseTo(0.05, 12);
  });

  it("is empty where nothing is typed", () => {
    expect(composed({ ...pressure, text: "  " }, "absolutePressure")).toBe("");
  });
});

describe("isNumberAlone", () => {
  it.each(["93.9", "1,5", "1 450", "-4", "1.2e-5", "2 × 10^5", "1 1/2", "½", "20.0(5)", "93.9 ± 0.2"])(
    "holds for %s",
    (text) => {
      expect(isNumberAlone(text)).toBe(true);
    },
  );

  it.each(["180 °F", "24.7 psi", "diesel", "60 %", "", "±"])("does not hold for %s", (text) => {
    expect(isNumberAlone(text)).toBe(false);
  });
});

describe("parted", () => {
  it("parts a plain text", () => {
    expect(parted("93.9 ± 0.2 kPa absolute", "absolutePressure", kPa)).toEqual(pressure);
    expect(parted("(60 ± 5) %", "ratio", one)).toEqual({ text: "60", plusMinus: "5", unit: "%" });
    expect(parted("2800 ± 25 rpm", "rotationalSpeed", rpm)).toEqual({ text: "2800", plusMinus: "25", unit: "rpm" });
  });

  it("leaves whole what it could not put together again", () => {
    const whole = "58 mpg (imperial) ± 1 mpg (imperial)";
    expect(parted("1.2e3 kPa absolute", "absolutePressure", kPa).text).toBe("1.2e3 kPa absolute");
    expect(composed(parted(whole, "fuelEconomy", read(whole, "fuelEconomy").unit), "fuelEconomy")).toBe(whole);
  });
});

describe("converted", () => {
  it("shows number and ± in the new unit, to more figures than were stated", () => {
    expect(converted({ text: "18", plusMinus: "1", unit: "°C" }, "temperature", "°F")).toEqual({
      text: "64.4",
      plusMinus: "1.8",
      unit: "°F",
    });
    expect(converted({ text: "0", plusMinus: "", unit: "°C" }, "temperature", "K").text).toBe("273.15");
  });

  it("changes the value by less than a hundredth of the last stated digit", () => {
    for (const symbol of ["psi", "inHg", "atm", "Pa", "mbar"]) {
      const now = read(
        composed(converted(pressure, "absolutePressure", symbol), "absolutePressure"),
        "absolutePressure",
      );
      expect(Math.abs(now.in(kPa) - 93.9)).toBeLessThan(0.1 / 100);
    }
  });

  it("keeps a text that cannot be read", () => {
    expect(converted({ text: "much", plusMinus: "", unit: "°C" }, "temperature", "°F")).toEqual({
      text: "much",
      plusMinus: "",
      unit: "°F",
    });
  });
});

it("finds the unit that a text names", () => {
  expect(ownUnit("180 degF", "temperature")?.symbol).toBe("°F");
  expect(ownUnit("180", "temperature")).toBeUndefined();
  expect(ownUnit("180 potatoes", "temperature")).toBeUndefined();
});
