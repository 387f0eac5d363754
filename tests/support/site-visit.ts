import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect } from "vitest";
import { launch, serveSite } from "./browser.ts";

/** What a test in a browser needs of the built site. */
export interface SiteVisit {
  /** The site's address, without a slash at its end. */
  readonly address: () => string;
  /** A page that takes note of every error and of every request that leaves the site. */
  readonly open: (path: string) => Promise<Page>;
}

/**
 * Serves the built site to the tests around it, each with a browser context of its own the size of a phone; every test
 * fails whose pages complained in the console or asked another server for something.
 */
export function siteVisit(executable: string | undefined): SiteVisit {
  let browser: Browser;
  let context: BrowserContext;
  let site: Awaited<ReturnType<typeof serveSite>>;
  let complaints: string[];

  beforeAll(async () => {
    site = await serveSite();
    browser = await launch(executable as string);
  });
  afterAll(async () => {
    await browser?.close();
    site?.close();
  });
  beforeEach(async () => {
    complaints = [];
    context = await browser.newContext({
      viewport: { width: 390, height: 844 },
      permissions: ["clipboard-read", "clipboard-write"],
    });
  });
  afterEach(async () => {
    await context.close();
    expect(complaints).toEqual([]);
  });

  return {
    address: () => site.address,
    async open(path) {
      const opened = await context.newPage();
      opened.on("pageerror", (error) => complaints.push(String(error)));
      opened.on("console", (message) => {
        if (["error", "warning"].includes(message.type())) complaints.push(message.text());
      });
      opened.on("request", (request) => {
        if (!request.url().startsWith(site.address) && !/^(data|blob):/.test(request.url()))
          complaints.push(`leaves the site: ${request.url()}`);
      });
      await opened.goto(site.address + path, { waitUntil: "networkidle" });
      return opened;
    },
  };
}
