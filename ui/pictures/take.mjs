/**
 * Pictures of every screen at each width and theme into `out/pictures`, and an
 * accessibility check of each.
 */
import { mkdir } from "node:fs/promises";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";

import { Faults, openStage, wanted } from "./stage.mjs";

/** All of them, unless a quick look names fewer: `WIDTHS=390 THEMES=light`. */
const listed = (name, all) => process.env[name]?.split(",") ?? all;
const WIDTHS = listed("WIDTHS", ["320", "390", "1280"]).map(Number);
const THEMES = listed("THEMES", ["light", "dark", "sun"]);
/** Text at twice its size, at the narrowest width. */
const LARGE = "large";
/** Every criterion of WCAG 2.2 AA that the engine can judge, and the order of headings. */
const RULES = {
  runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
  rules: { "heading-order": { enabled: true }, "page-has-heading-one": { enabled: true } },
};

const axe = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const folder = fileURLToPath(new URL("../../out/pictures/", import.meta.url));
await mkdir(folder, { recursive: true });
const stage = await openStage();
const faults = new Faults();

/** Words that do not fit into their box: cut, or drawn over what is beside them. */
function cut() {
  const found = [];
  for (const element of document.querySelectorAll("main *, header *, footer *, nav *")) {
    const style = getComputedStyle(element);
    if (element.closest(".unseen, svg") || style.display === "inline" || element.clientWidth === 0) continue;
    const scrolls = ["auto", "scroll"].includes(style.overflowX);
    // A field scrolls its own words.
    if (scrolls || ["INPUT", "TEXTAREA", "SELECT"].includes(element.tagName)) continue;
    if (element.scrollWidth > element.clientWidth + 1) found.push(element.outerHTML.slice(0, 160));
  }
  return found;
}

/** Where a finger finds too little to tap: less than 44 px high or wide. Links within a sentence are exempt. */
function small() {
  const LEAST = 43.5;
  const found = [];
  for (const element of document.querySelectorAll("a[href], button, summary, select, textarea, input, label.tick")) {
    const target = element.matches("input[type=checkbox], input[type=radio]") ? element.closest("label") : element;
    if (!target || element.closest(".unseen, p")) continue;
    const { width, height } = target.getBoundingClientRect();
    if (width === 0 || height === 0 || getComputedStyle(target).clipPath !== "none") continue;
    if (width < LEAST || height < LEAST) found.push(`${Math.round(width)} × ${Math.round(height)}: ${target.outerHTML.slice(0, 160)}`);
  }
  return found;
}

async function take(name, hash, width, theme, large = false) {
  const where = `${name}-${width}-${large ? LARGE : theme}`;
  const { page, leave } = await stage.page(hash, { where, faults, width, theme, large });
  // As high as its content, so that nothing hides under the sticky bars.
  const high = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height: Math.max(high, 844) });

  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  if (overflow > 0) faults.add(where, `${overflow} px wider than the window`);
  for (const element of await page.evaluate(cut)) faults.add(where, `does not fit: ${element}`);
  for (const element of await page.evaluate(small)) faults.add(where, `too small to tap: ${element}`);

  await page.addScriptTag({ path: axe });
  const { violations } = await page.evaluate((rules) => window.axe.run(document, rules), RULES);
  for (const violation of violations) {
    for (const node of violation.nodes) faults.add(where, `${violation.id}: ${node.html}\n  ${node.failureSummary}`);
  }
  await page.screenshot({ path: `${folder}${where}.png` });
  await leave();
}

try {
  for (const [name, hash] of wanted) {
    for (const width of WIDTHS) for (const theme of THEMES) await take(name, hash, width, theme);
    await take(name, hash, 320, "light", true);
  }
} finally {
  await stage.close();
}
console.log(`pictures in out/pictures, ${faults.count} faults`);
process.exit(faults.count > 0 ? 1 : 0);
