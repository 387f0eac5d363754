// The planner in a real browser, used as a builder would. What is expected is computed with the library.
import { readFileSync } from "node:fs";
import { read, rpm, write } from "@chargewright/quantities";
import { tableCsv } from "chargewright";
import { type Build, buildSections, compareVariants, fuelLimit, readBuild, solve, sweep } from "chargewright/build";
import moorland from "chargewright/examples/moorland-two-seater.json";
import aspirated from "chargewright/examples/naturally-aspirated.json";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { findChromium } from "../support/browser.ts";
import { siteVisit } from "../support/site-visit.ts";

const executable = findChromium();
const PLANNER = "/planner.html";
const condition = { engineSpeed: "2800 rpm" };
const build = readBuild(moorland);

/** The demo build with another drive ratio. */
const driven = (driveRatio: string) => readBuild({ ...moorland, blower: { ...moorland.blower, driveRatio } });
const boostOf = (of: Build) => write(solve(of, condition).boost, { digits: 3 });

describe.skipIf(executable === undefined)("the planner", () => {
  const { address, open } = siteVisit(executable);

  const field = (page: Page, path: string) => page.locator(`[data-field="${path}"] [data-part="text"]`);
  const fact = (page: Page, run: string, name: string) => page.locator(`[data-run="${run}"] [data-fact="${name}"]`);
  const section = (page: Page, name: string) => page.locator(`[data-section="${name}"] > summary`);
  const drawn = (page: Page, chart: string, run: string) =>
    page.locator(`[data-chart="${chart}"] [data-line="${run}"]`).getAttribute("d");

  async function copied(page: Page, what: string): Promise<string> {
    await page.locator(`[data-copy="${what}"]`).click();
    return page.evaluate(() => navigator.clipboard.readText());
  }

  async function downloaded(page: Page, what: string): Promise<string> {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.locator(`[data-download="${what}"]`).click(),
    ]);
    return readFileSync(await download.path(), "utf8");
  }

  test("another drive ratio changes boost, line and table as solve and sweep say", async () => {
    const page = await open(PLANNER);
    expect(await fact(page, "A", "boost").innerText()).toBe(boostOf(build));
    const before = await drawn(page, "boost", "A");
    await section(page, "blower").click();
    await field(page, "blower.driveRatio").fill("1.7");
    await expect.poll(() => fact(page, "A", "boost").innerText()).toBe(boostOf(driven("1.7")));
    // Charts and tables follow a frame later.
    await expect.poll(() => drawn(page, "boost", "A")).not.toBe(before);

    const { channels } = sweep(driven("1.7"), condition, { engineSpeed: [rpm(2800)] });
    const chart = page.locator('[data-chart="boost"]');
    await chart.locator("summary").click();
    const row = chart.locator("tbody tr").filter({ has: page.locator('th:text-is("2800")') });
    expect(Number(await row.locator("td").first().innerText())).toBeCloseTo(channels.boost.values[0] as number, 1);
  });

  test("variants are laid beside the build, with the reason in the library's words", async () => {
    const page = await open(PLANNER);
    const base = { name: "", build, condition };
    const { cooler: _, ...uncooled } = build;
    const [without] = compareVariants(base, { name: "", build: uncooled, condition }).variants;
    expect(await page.locator('[data-run="B"] [data-reason]').innerText()).toContain(without?.reason);

    await page.locator('[data-change="drive ratio"]').click();
    await field(page, "variant.2").fill("1.2");
    await expect.poll(() => fact(page, "C", "boost").innerText()).toBe(boostOf(driven("1.2")));
    await page.locator('[data-change="altitude"]').click();
    await field(page, "variant.3").fill("1500");
    const high = solve(build, { ...condition, altitude: "1500 m" });
    await expect.poll(() => fact(page, "D", "boost").innerText()).toBe(write(high.boost, { digits: 3 }));
    expect(await page.locator("[data-change]").count()).toBe(0);
    await page.getByLabel("Remove variant B, no cooler").click();
    expect(await fact(page, "B", "boost").innerText()).toBe(boostOf(driven("1.2")));
  });

  test("says what is wrong at the field, keeps what was typed and the last good result", async () => {
    const page = await open(PLANNER);
    await section(page, "cooler").click();
    await field(page, "cooler.testConductance").fill("55 potatoes");
    const entry = page.locator('[data-field="cooler.testConductance"]');
    await expect.poll(() => entry.locator(".field-error").count()).toBe(1);
    expect(await field(page, "cooler.testConductance").getAttribute("aria-invalid")).toBe("true");
    expect(await field(page, "cooler.testConductance").inputValue()).toBe("55 potatoes");
    expect(await fact(page, "A", "boost").innerText()).toBe(boostOf(build));
    expect(await page.locator("[data-told]").innerText()).toMatch(/needs mending/);
    await field(page, "cooler.testConductance").fill("55");
    await field(page, "ambientTemperature").fill("300");
    await expect.poll(() => page.locator('[data-field="ambientTemperature"] .field-error').count()).toBe(1);
    expect(await page.locator("main").innerText()).not.toContain("NaN");
  });

  test("a copied link brings everything back elsewhere and overwrites nothing", async () => {
    const page = await open(PLANNER);
    await section(page, "blower").click();
    await field(page, "blower.driveRatio").fill("1.62");
    await section(page, "relief").click();
    await page.locator('[data-remove="relief"]').click();
    await field(page, "ambientTemperature").fill("31");
    await page.locator('[data-shown="pressure"]').selectOption({ label: "psi" });
    const link = await copied(page, "link");
    expect(decodeURIComponent(link)).toContain(
      "#v=1&build=moorland-two-seater&blower.driveRatio=1.62&ambientTemperature=31+°C",
    );
    const saved = await page.evaluate(() => JSON.stringify({ ...localStorage }));

    const again = await open(link.slice(address().length));
    const { relief: _, ...unrelieved } = driven("1.62");
    const point = solve(unrelieved, { ...condition, ambientTemperature: "31 °C" });
    const psi = read("1 psi gauge", "gaugePressure").unit;
    await expect.poll(() => fact(again, "A", "boost").innerText()).toBe(write(point.boost, { unit: psi, digits: 3 }));
    expect(await again.locator('[data-section="relief"]').count()).toBe(0);
    expect(await again.evaluate(() => JSON.stringify({ ...localStorage }))).toBe(saved);
    expect(await again.evaluate(() => document.cookie)).toBe("");
  });

  test("says of a bad link that it is one, and works on", async () => {
    for (const bad of ["v=9&build=moorland-two-seater", "v=1&build=steamer", "v=1&wind=9&blower.driveRatio=%00"]) {
      const page = await open(`${PLANNER}#${bad}`);
      await expect.poll(() => page.locator("[data-notice]").count(), { message: bad }).toBe(1);
      await field(page, "engineSpeed").fill("2000");
      await page.close();
    }
    const page = await open(`${PLANNER}#v=9`);
    expect(await fact(page, "A", "boost").innerText()).toBe(boostOf(build));
  });

  test("a build of one's own is pasted, copied, downloaded, and can be taken back", async () => {
    const page = await open(PLANNER);
    const own = { ...aspirated, name: "My own", engine: { ...aspirated.engine, volumetricEfficiency: "0.8" } };
    await page.locator("[data-json] > summary").click();
    const paste = page.locator("[data-paste]");
    await paste.fill('{ "name": ');
    await page.locator("[data-take]").click();
    expect(await page.locator("[data-refused]").innerText()).toMatch(/no JSON/);
    await paste.fill(JSON.stringify(own));
    await page.locator("[data-take]").click();
    const air = write(solve(readBuild(own), condition).engineFlow, { digits: 3 });
    await expect.poll(() => fact(page, "A", "engineFlow").innerText()).toBe(air);
    expect(readBuild(await copied(page, "json"))).toEqual(readBuild(own));
    expect(readBuild(await downloaded(page, "json"))).toEqual(readBuild(own));

    const link = await copied(page, "link");
    const again = await open(link.slice(address().length));
    await expect.poll(() => fact(again, "A", "engineFlow").innerText()).toBe(air);

    await page.locator('[data-add="blower"]').click();
    await expect.poll(() => field(page, "blower.driveRatio").inputValue()).toBe(moorland.blower.driveRatio);
    await page.locator("[data-start]").selectOption("moorland-two-seater");
    await expect.poll(() => fact(page, "A", "boost").innerText()).toBe(boostOf(build));
    await page.locator("[data-undo]").click();
    await expect.poll(() => section(page, "").innerText()).toContain("My own");
  });

  test("the fuel limit's files are the library's, beside their cautions", async () => {
    const page = await open(PLANNER);
    const { table, schedule, naturallyAspirated, cautions } = fuelLimit(build);
    expect(await downloaded(page, "fuel_limit.csv")).toBe(tableCsv(table, { name: "fuel_limit" }));
    expect(await downloaded(page, "limit_steps.csv")).toBe(
      tableCsv(schedule?.steps as NonNullable<typeof schedule>["steps"], { name: "limit_steps" }),
    );
    const { unit, si } = naturallyAspirated;
    const told = Number.parseFloat(await page.locator("[data-naturally-aspirated]").innerText());
    expect(told).toBeLessThanOrEqual(unit.fromSi(si));
    expect(told).toBeGreaterThan(0.99 * unit.fromSi(si));
    for (const caution of cautions) expect(await page.getByText(caution).isVisible()).toBe(true);
  });

  test("a value opens in its calculator with the state that gave it", async () => {
    const page = await open(PLANNER);
    const cell = page.locator('[data-row="Blower: Blower power"] a').first();
    const opened = await open((await cell.getAttribute("href")) as string);
    const shown = () => opened.locator('[data-result="shaftPower"] [data-value]').innerText();
    const power = solve(build, condition).blowerPower;
    await expect.poll(async () => Math.abs(read(await shown(), "power").si - power.si) / power.si).toBeLessThan(0.05);
    expect(await opened.locator(".field-error").count()).toBe(0);
  });

  test("nothing scrolls sideways on a phone, with every section open and every variant there", async () => {
    const page = await open(
      `${PLANNER}#v=1&build=moorland-two-seater&variant.1=no+cooler&variant.2=drive+ratio+1.6&variant.3=air+temperature+35+%C2%B0C`,
    );
    for (const { name } of buildSections()) await section(page, name).click();
    for (const summary of await page.locator("[data-chart] summary").all()) await summary.click();
    await expect.poll(() => page.locator("[data-field]").count()).toBeGreaterThan(60);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    const unnamed = await page.evaluate(
      () =>
        [...document.querySelectorAll("input, select, textarea")].filter(
          (each) => (each as HTMLInputElement).labels?.length === 0 && !each.hasAttribute("aria-label"),
        ).length,
    );
    expect(unnamed).toBe(0);
  });
});

test("the planner's page holds the demo build's results before any script runs", () => {
  const page = readFileSync(new URL("../../docs-site/.vitepress/dist/planner.html", import.meta.url), "utf8");
  const bare = page.replace(/<script[\s\S]*?<\/script>/g, "");
  expect(bare).toContain(`>${boostOf(build)}<`);
  expect(bare).toMatch(/data-line="A"[^>]* d="M|d="M[^"]*"[^>]* data-line="A"/);
  expect(bare).not.toMatch(/>[^<]*\b(NaN|undefined)\b[^<]*</);
});
