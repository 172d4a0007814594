/**
 * The screens of the app with a faked host, for pictures and for the checks of
 * reach: what they show, not how they behave.
 *
 * Needs `npm run build` first, and Chromium (its path in CHROMIUM if not Debian's).
 */
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";

import { chromium } from "playwright-core";
import { preview } from "vite";

import { fakeHost } from "./host.mjs";

export const SCREENS = {
  "visits-empty": "?empty#/visits",
  visits: "#/visits",
  settings: "#/settings",
  recovery: "?damaged#/visits",
  exchange: "#/exchange",
  board: "#/board",
  behind: `#/board/${encodeURIComponent(JSON.stringify({ title: "Air left in one circuit", filter: {} }))}`,
  learned: "#/learned",
  call: "#/visit/v1/call",
  system: "#/visit/v1/system",
  "system-ground": "#/visit/v1/system/ground",
  readings: "#/visit/v1/readings",
  "reading-entry": "#/visit/v1/readings/suction_pressure",
  "reading-left": "#/visit/v1/readings/entering_water:left",
  observed: "#/visit/v1/readings/observed",
  drawing: "#/visit/v1/readings/drawing",
  causes: "#/visit/v1/causes",
  pictures: "#/visit/v1/causes/pictures",
  plan: "#/visit/v1/plan",
  // A step that is done, with the caution that was read for it.
  "plan-done": "?open=[data-step-id=s1]#/visit/v1/plan",
  report: "#/visit/v1/report",
  // What readings that contradict each other make of the screens, in each language.
  "odd-call": "?call=odd-en#/visit/v1/call",
  "odd-observed": "?call=odd-en#/visit/v1/readings/observed",
  "odd-readings": "?call=odd-en#/visit/v1/readings",
  "odd-causes": "?call=odd-en#/visit/v1/causes",
  "odd-call-es": "?call=odd-es#/visit/v1/call",
  "odd-causes-es": "?call=odd-es#/visit/v1/causes",
  "gone-causes": "?call=gone-en#/visit/v1/causes",
  "warm-causes": "?call=warm-en#/visit/v1/causes",
  // Readings where two levels meet, more rise than one circulator gives, warm water.
  "edge-causes": "?call=edge-en&open=[data-cause]#/visit/v1/causes",
  "edge-causes-es": "?call=edge-es&open=[data-cause]#/visit/v1/causes",
  "edge-plan": "?call=edge-en#/visit/v1/plan",
  "edge-plan-es": "?call=edge-es#/visit/v1/plan",
  // The step that sets the pressure: of a loop that is left as it stood, and of one that nobody read.
  "edge-charge": "?call=edge-en&open=[data-step-id=charge-to-pressure]#/visit/v1/plan",
  "edge-charge-es": "?call=edge-es&open=[data-step-id=charge-to-pressure]#/visit/v1/plan",
  "unread-plan": "?call=unread-en&open=[data-step-id=charge-to-pressure]#/visit/v1/plan",
  "unread-plan-es": "?call=unread-es&open=[data-step-id=read-gauge-at-rest]#/visit/v1/plan",
  "edge-report-es": "?call=edge-es#/visit/v1/report",
};

/** The screens named on the command line, or all. */
export const wanted = Object.entries(SCREENS).filter(
  ([name]) => process.argv.length < 3 || process.argv.slice(2).includes(name),
);

const beside = (name) => fileURLToPath(new URL(name, import.meta.url));

/** Counts what is wrong, and says it. */
export class Faults {
  count = 0;

  add(where, what) {
    this.count += 1;
    console.error(`${where}: ${what}`);
  }
}

/** Opens what is folded at the places of a selector: a card, or the details in it and around it. */
function unfold(selector) {
  for (const place of selector ? document.querySelectorAll(selector) : []) {
    const head = place.querySelector(".head[aria-expanded=false]");
    if (head) head.click();
    const inner = [...place.querySelectorAll("details")].slice(0, 1);
    for (let details = place.closest("details"); details; details = details.parentElement.closest("details")) inner.push(details);
    for (const details of inner) details.open = true;
  }
}

export async function openStage() {
  const server = await preview({ preview: { port: 0 }, logLevel: "error" });
  const address = server.resolvedUrls.local[0];
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox"],
  });
  // The drawings are the engine's own, of an invented call and an invented fleet.
  const drawn = await readFile(beside("drawings.json"), "utf8");
  const board = await readFile(beside("board.json"), "utf8");
  const calls = await readFile(beside("calls.json"), "utf8");
  return {
    /** A page that stands at a screen, and how to leave it. */
    async page(hash, { where, faults, width = 390, theme = "light", large = false, reducedMotion = "no-preference" }) {
      const context = await browser.newContext({ viewport: { width, height: 844 }, reducedMotion });
      const page = await context.newPage();
      page.on("pageerror", (error) => faults.add(where, error.message));
      page.on("console", (message) => {
        if (message.type() === "error") faults.add(where, message.text());
      });
      const kept = { theme, picture: drawn, board, calls };
      await page.addInitScript((kept) => {
        for (const [key, value] of Object.entries(kept)) localStorage.setItem(key, value);
      }, kept);
      await page.addInitScript(fakeHost);
      // Text at twice its size, from the start: charts are laid out for the size they find.
      if (large) {
        await page.addInitScript(() => {
          const sheet = new CSSStyleSheet();
          sheet.replaceSync("html { font-size: 212.5% !important }");
          document.adoptedStyleSheets = [sheet];
        });
      }
      await page.goto(address + hash);
      await page.waitForSelector("h1");
      await page.evaluate(() => document.fonts.ready);
      await page.waitForTimeout(100);
      await page.evaluate(unfold, new URLSearchParams(hash.split("#")[0]).get("open"));
      return { page, leave: () => context.close() };
    },
    async close() {
      await browser.close();
      await server.close();
    },
  };
}
