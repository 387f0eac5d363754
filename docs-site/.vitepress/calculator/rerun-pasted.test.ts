import { airDensity, checkLine, readInputs, smokeLimitedFuel, work, workedMarkdown, workedText } from "chargewright";
import { relations } from "chargewright/registry";
import { describe, expect, it } from "vitest";
import { rerunPasted } from "./rerun-pasted.ts";

const again = (text: string) => rerunPasted(text, async (id) => relations.get(id));

const args = readInputs(airDensity, {
  pressure: "93.90 ± 0.2 kPa absolute",
  temperature: "18.0 °C",
  relativeHumidity: "60 %",
});
const check = work(airDensity, args);
const line = checkLine(check, args);
const text = workedText(check, "https://example.org/#v=1&pressure=93.90", line);

describe("rerunPasted", () => {
  it.each([
    ["text", text],
    ["Markdown", workedMarkdown(check, undefined, line)],
    ["a quoted text", text.replace(/^/gm, "> ")],
    ["the line alone", line],
  ])("finds %s the same", async (_, pasted) => {
    const { same, foreign } = await again(pasted);
    expect({ same, foreign }).toEqual({ same: true, foreign: [] });
  });

  it("finds an altered result in the line", async () => {
    expect((await again(line.replace(/=> density = 1\.1/, "=> density = 1.2"))).same).toBe(false);
  });

  it("finds a number altered above the line", async () => {
    const altered = text.replace(/(density of the air: )1\.1/, "$11.2");
    expect(altered).not.toBe(text);
    expect((await again(altered)).foreign).toEqual([expect.stringContaining("density of the air: 1.2")]);
  });

  it("says what it cannot run", async () => {
    await expect(again("hello")).rejects.toMatchObject({ code: "unreadable" });
    await expect(again(line.replace("air-density", "hot-air"))).rejects.toMatchObject({ code: "unknown-relation" });
  });

  it("finds a check with a preset the same", async () => {
    const given = readInputs(smokeLimitedFuel, { airMassFlow: "36.712 g/s", smokeLimitRatio: "indirect injection" });
    const limit = work(smokeLimitedFuel, given);
    const { same, foreign } = await again(workedText(limit, undefined, checkLine(limit, given)));
    expect({ same, foreign }).toEqual({ same: true, foreign: [] });
  });
});
