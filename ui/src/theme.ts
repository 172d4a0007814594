/**
 * Light, dark or full-sun colours: the device's wish unless the person chose.
 *
 * The engine keeps the choice. A copy on this device paints the first frame
 * before the engine has answered.
 */

export const THEMES = ["system", "light", "dark", "sun"] as const;
export type Theme = (typeof THEMES)[number];

const KEY = "theme";
const dark = window.matchMedia("(prefers-color-scheme: dark)");

export function themeNamed(name: string | null): Theme {
  return THEMES.find((theme) => theme === name) ?? "system";
}

export function chooseTheme(theme: Theme): void {
  window.localStorage.setItem(KEY, theme);
  showTheme();
}

export function showTheme(): void {
  const chosen = themeNamed(window.localStorage.getItem(KEY));
  const shown = chosen === "system" ? (dark.matches ? "dark" : "light") : chosen;
  document.documentElement.dataset["theme"] = shown;
}

export function followTheme(): void {
  showTheme();
  dark.addEventListener("change", showTheme);
}
