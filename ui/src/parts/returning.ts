/**
 * Where a screen was left, so that one who comes back finds the place again: the
 * link that led away, if one comes back from where it led.
 */
const left = new Map<string, string>();
let from = "";

/** The address before the present one. */
export function moved(oldAddress: string): void {
  const hash = oldAddress.indexOf("#");
  from = hash < 0 ? "" : oldAddress.slice(hash);
}

if (typeof window !== "undefined") window.addEventListener("hashchange", (event) => moved(event.oldURL));

/** A link of the screen at `address` was followed. */
export function leave(address: string, href: string): void {
  left.set(address, href);
}

/** The link by which the screen at `address` was left, if that is where one comes from. */
export function cameBackBy(address: string): string | null {
  const href = left.get(address);
  return href !== undefined && href === from ? href : null;
}

/** Brings the link `href` inside `part` into sight and under the finger; false if it is not there. */
export function findAgain(part: HTMLElement, href: string): boolean {
  const link = [...part.querySelectorAll<HTMLElement>("a[href]")].find((known) => known.getAttribute("href") === href);
  if (!link) return false;
  for (let around = link.parentElement; around; around = around.parentElement) {
    if (around instanceof HTMLDetailsElement) around.open = true;
  }
  link.focus({ preventScroll: true });
  link.scrollIntoView({ block: "center" });
  return true;
}
