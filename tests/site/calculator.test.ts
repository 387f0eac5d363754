// The built site in a real browser, used as a visitor would.
import { readFileSync } from "node:fs";
import { relations } from "chargewright/registry";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { findChromium } from "../support/browser.ts";
import { siteVisit } from "../support/site-visit.ts";

const executable = findChromium();

describe.skipIf(executable === undefined)("the site", () => {
  const { address, open } = siteVisit(executable);
  let page: Page;

  const field = (at: Page, name: string, part = "text") => at.locator(`[data-field="${name}"] [data-part="${part}"]`);
  const unit = (at: Page, name: string) => at.locator(`[data-field="${name}"] select`);
  const result = (at: Page, name: string) => at.locator(`[data-result="${name}"] [data-value]`);

  test("a changed field, unit and ± change result and equation, and the copied link restores them", async () => {
    page = await open("/calculators/air-density.html");
    const before = await result(page, "density").innerText();
    await field(page, "pressure").fill("84");
    await expect.poll(() => result(page, "density").innerText()).not.toBe(before);
    expect(await page.locator("[data-worked]").first().innerText()).toContain("84000");

    await unit(page, "temperature").selectOption({ label: "°F" });
    await field(page, "temperature").fill("100.4");
    await field(page, "temperature", "plus-minus").fill("4");
    await field(page, "pressure", "plus-minus").fill("0.5");
    await field(page, "relativeHumidity").fill("");
    await expect.poll(() => result(page, "density").innerText()).toMatch(/^0\.940\d* ± 0\.00\d+ kg\/m³$/);
    expect(await page.locator("[data-worked]").first().innerText()).toContain("311.150");

    await page.locator('[data-copy="link"]').click();
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toContain("#v=1&");
    const again = await open(link.slice(address().length));
    expect(await field(again, "pressure").inputValue()).toBe("84");
    expect(await field(again, "temperature").inputValue()).toBe("100.4");
    expect(await field(again, "temperature", "plus-minus").inputValue()).toBe("4");
    expect(await result(again, "density").innerText()).toBe(await result(page, "density").innerText());
  });

  test("finds an input from a wanted result", async () => {
    page = await open("/calculators/blower-flow.html");
    await page.locator('[data-find="driveRatio"]').click();
    await page.getByLabel("Wanted result").selectOption("massFlow");
    await field(page, "massFlow").fill("40");
    await expect.poll(() => page.locator('[data-found="driveRatio"]').innerText()).toMatch(/^1\.58/);
    await field(page, "massFlow").fill("4000");
    await expect.poll(() => page.locator('[data-field="massFlow"]').innerText()).toMatch(/nearest that can be had/);
  });

  test("says what is wrong beside the field, keeps the last good result and never shows NaN", async () => {
    page = await open("/calculators/air-density.html");
    const before = await result(page, "density").innerText();
    await field(page, "pressure").fill("9a");
    await expect.poll(() => field(page, "pressure").getAttribute("aria-invalid")).toBe("true");
    expect(await result(page, "density").innerText()).toBe(before);
    await field(page, "pressure").fill("10 psi");
    await expect.poll(() => page.locator('[data-field="pressure"]').innerText()).toMatch(/absolute or gauge/);
    expect(await page.locator("main").innerText()).not.toContain("NaN");
  });

  test("a copied worked check, pasted back, is the same; an altered one is found", async () => {
    page = await open("/calculators/cooler-effectiveness.html");
    for (const what of ["text", "markdown"]) {
      await page.locator(`[data-copy="${what}"]`).click();
      const check = await page.evaluate(() => navigator.clipboard.readText());
      const paste = await open("/rerun.html");
      await paste.locator("[data-rerun]").fill(check);
      await expect.poll(() => paste.locator("[data-rerun-verdict]").innerText()).toMatch(/^Same/);
      await paste.locator("[data-rerun]").fill(check.replaceAll("0.701", "0.801"));
      await expect.poll(() => paste.locator("[data-rerun-verdict]").innerText()).toMatch(/^Altered/);
      await paste.close();
    }
  });

  test("the calculators of every subject neither scroll sideways on a phone nor complain in the console", async () => {
    const bySubject = groupBySubject();
    // The first and the last of each subject: every page is made from the same components.
    const some = [...bySubject.values()].flatMap((each) => [...new Set([each[0]?.id, each.at(-1)?.id])]);
    for (const id of some) {
      const at = await open(`/calculators/${id}.html`);
      const overflow = await at.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(overflow, id).toBeLessThanOrEqual(0);
      await at.close();
    }
  }, 600_000);
});

function groupBySubject() {
  const groups = new Map<string, { readonly id: string }[]>();
  for (const relation of relations.values())
    groups.set(relation.subject, [...(groups.get(relation.subject) ?? []), relation]);
  return groups;
}

test("every calculator's page holds its example's results before any script runs", () => {
  for (const [id, relation] of relations) {
    const page = readFileSync(
      new URL(`../../docs-site/.vitepress/dist/calculators/${id}.html`, import.meta.url),
      "utf8",
    );
    for (const name of Object.keys(relation.outputs)) {
      const [, shown] = new RegExp(`data-result="${name}"[\\s\\S]*?data-value[^>]*>([^<]*)<`).exec(page) ?? [];
      expect(shown, `${id} ${name}`).toMatch(/\d/);
    }
    expect(page.replace(/<script[\s\S]*?<\/script>/g, ""), id).not.toMatch(/>[^<]*\b(NaN|undefined)\b[^<]*</);
  }
});
