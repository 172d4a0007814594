/**
 * Pictures of every screen at each width and theme into `out/pictures`, and an
 * accessibility check of each. The host is faked: this shows looks, while the
 * tests of the real window show behaviour.
 *
 * Needs `npm run build` first, and Chromium (its path in CHROMIUM if not Debian's).
 */
import { mkdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";

import { chromium } from "playwright-core";
import { preview } from "vite";

import { fakeHost } from "./host.mjs";

const SCREENS = {
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
  observed: "#/visit/v1/readings/observed",
  drawing: "#/visit/v1/readings/drawing",
  causes: "#/visit/v1/causes",
  pictures: "#/visit/v1/causes/pictures",
  plan: "#/visit/v1/plan",
  report: "#/visit/v1/report",
};
/** All of them, unless a quick look names fewer: `WIDTHS=390 THEMES=light`. */
const listed = (name, all) => process.env[name]?.split(",") ?? all;
const WIDTHS = listed("WIDTHS", ["320", "390", "1280"]).map(Number);
const THEMES = listed("THEMES", ["light", "dark", "sun"]);
/** Text at twice its size, at the narrowest width. */
const LARGE = "large";

const wanted = process.argv.slice(2);
const axe = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const folder = fileURLToPath(new URL("../../out/pictures/", import.meta.url));
await mkdir(folder, { recursive: true });

const server = await preview({ preview: { port: 0 }, logLevel: "error" });
const address = server.resolvedUrls.local[0];
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});

// The drawings are the engine's own, of an invented call.
const drawn = await readFile(fileURLToPath(new URL("drawings.json", import.meta.url)), "utf8");
const drawnBoard = await readFile(fileURLToPath(new URL("board.json", import.meta.url)), "utf8");

let faults = 0;
function fault(where, what) {
  faults += 1;
  console.error(`${where}: ${what}`);
}

async function take(name, hash, width, theme, large = false) {
  const context = await browser.newContext({ viewport: { width, height: 844 } });
  const page = await context.newPage();
  const where = `${name}-${width}-${large ? LARGE : theme}`;
  page.on("pageerror", (error) => fault(where, error.message));
  page.on("console", (message) => {
    if (message.type() === "error") fault(where, message.text());
  });
  await page.addInitScript(`localStorage.setItem("theme", "${theme}")`);
  await page.addInitScript((drawn) => localStorage.setItem("picture", drawn), drawn);
  await page.addInitScript((drawn) => localStorage.setItem("board", drawn), drawnBoard);
  await page.addInitScript(fakeHost);
  await page.goto(address + hash);
  await page.waitForSelector("h1");
  if (large) await page.addStyleTag({ content: "html { font-size: 212.5% !important }" });
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(100);
  // As high as its content, so that nothing hides under the sticky bars.
  const high = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height: Math.max(high, 844) });

  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  if (overflow > 0) fault(where, `${overflow} px wider than the window`);

  await page.addScriptTag({ path: axe });
  const { violations } = await page.evaluate(() =>
    window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }),
  );
  for (const violation of violations) {
    for (const node of violation.nodes) fault(where, `${violation.id}: ${node.html}\n  ${node.failureSummary}`);
  }
  await page.screenshot({ path: `${folder}${where}.png` });
  await context.close();
}

try {
  for (const [name, hash] of Object.entries(SCREENS)) {
    if (wanted.length > 0 && !wanted.includes(name)) continue;
    for (const width of WIDTHS) for (const theme of THEMES) await take(name, hash, width, theme);
    await take(name, hash, 320, "light", true);
  }
} finally {
  await browser.close();
  await server.close();
}
console.log(`pictures in out/pictures, ${faults} faults`);
process.exit(faults > 0 ? 1 : 0);
