/**
 * Whether every screen can be used without a finger and without eyes: each
 * control is reached with the tab key and shows that it is, each has a name for
 * a screen reader, results are told as they come, and nothing moves for those
 * who asked for stillness.
 */
import { Faults, openStage, wanted } from "./stage.mjs";

/** Roles that a person acts on. */
const CONTROLS = new Set([
  "button", "link", "textbox", "searchbox", "combobox", "checkbox", "radio", "spinbutton", "Date", "DisclosureTriangle", "slider",
]);
/** Screens on which something is worked out or kept, and which must tell it. */
const TELLING = new Set(["visits", "settings", "call", "system", "readings", "reading-entry", "causes", "plan", "report", "exchange"]);

const stage = await openStage();
const faults = new Faults();

/** Marks what can be reached by the tab key, one of each group of radio buttons. */
function mark() {
  const groups = new Set();
  let count = 0;
  for (const element of document.querySelectorAll("a[href], button, input, select, textarea, summary, [tabindex='0']")) {
    // The summary of closed details is there, but nothing below it.
    const around = element.matches("summary") ? element.parentElement.parentElement : element;
    if (element.disabled || around.closest("details:not([open])") || element.closest("[aria-hidden=true]")) continue;
    if (element.type === "radio") {
      if (groups.has(element.name)) continue;
      groups.add(element.name);
      // A group is entered at what is chosen in it.
      const chosen = document.querySelector(`input[name="${CSS.escape(element.name)}"]:checked`) ?? element;
      chosen.dataset.reach = String(count);
    } else {
      element.dataset.reach = String(count);
    }
    count += 1;
  }
  return count;
}

/** What has the keys, and whether it shows it: an outline of its own or of the label around it. */
function focused() {
  const element = document.activeElement;
  if (!element || element === document.body) return null;
  const shows = [element, element.closest("label")].filter(Boolean).some((one) => {
    const style = getComputedStyle(one);
    return style.outlineStyle !== "none" && Number.parseFloat(style.outlineWidth) >= 2;
  });
  const box = (element.closest("label") ?? element).getBoundingClientRect();
  const seen = box.bottom > 0 && box.top < window.innerHeight && box.right > 0 && box.left < window.innerWidth;
  return { reach: element.dataset.reach ?? null, shows, seen, html: element.outerHTML.slice(0, 140) };
}

async function keys(page, where) {
  const count = await page.evaluate(mark);
  if (count === 0) faults.add(where, "nothing can be reached");
  await page.evaluate(() => {
    // The keys begin at the top of the page, not at its title.
    document.body.tabIndex = -1;
    document.body.focus();
    document.body.removeAttribute("tabindex");
  });
  const reached = new Set();
  // A date is several stops.
  for (let step = 0; step < 2 * count + 10; step += 1) {
    await page.keyboard.press("Tab");
    const now = await page.evaluate(focused);
    if (!now) break;
    if (!now.shows) faults.add(where, `does not show that it has the keys: ${now.html}`);
    if (!now.seen) faults.add(where, `is out of sight while it has the keys: ${now.html}`);
    if (now.reach !== null) reached.add(now.reach);
  }
  const missed = await page.evaluate(
    (reached) =>
      [...document.querySelectorAll("[data-reach]")]
        .filter((element) => !reached.includes(element.dataset.reach))
        .map((element) => element.outerHTML.slice(0, 140)),
    [...reached],
  );
  for (const element of missed) faults.add(where, `is not reached by the tab key: ${element}`);
}

async function names(page, where) {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send("Accessibility.getFullAXTree");
  let controls = 0;
  for (const node of nodes) {
    if (node.ignored || !CONTROLS.has(node.role?.value)) continue;
    controls += 1;
    if (!node.name?.value?.trim()) faults.add(where, `has no name: ${node.role.value} ${JSON.stringify(node.properties)}`);
  }
  if (controls === 0) faults.add(where, "no control is told to a screen reader");
}

async function told(page, name, where) {
  const live = await page.locator("[role=status], [role=alert], [role=timer], [aria-live]").count();
  if (TELLING.has(name) && live === 0) faults.add(where, "tells no result as it comes");
}

async function still(page, where) {
  const moving = await page.evaluate(() =>
    [...document.querySelectorAll("*")].filter((element) => {
      const style = getComputedStyle(element);
      const lasts = (text) => text.split(",").some((part) => Number.parseFloat(part) > 0);
      return lasts(style.transitionDuration) || lasts(style.animationDuration);
    }).length,
  );
  if (moving > 0) faults.add(where, `${moving} parts move for one who asked for stillness`);
}

try {
  for (const [name, hash] of wanted) {
    const { page, leave } = await stage.page(hash, { where: name, faults, reducedMotion: "reduce" });
    await names(page, name);
    await told(page, name, name);
    await still(page, name);
    await keys(page, name);
    await leave();
  }
} finally {
  await stage.close();
}
console.log(`${wanted.length} screens looked at without a finger, ${faults.count} faults`);
process.exit(faults.count > 0 ? 1 : 0);
