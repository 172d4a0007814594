/** Light, dark or full-sun colours: the system's wish unless the person chose. */

export const THEMES = ["system", "light", "dark", "sun"] as const;
export type Theme = (typeof THEMES)[number];

const KEY = "theme";
const dark = window.matchMedia("(prefers-color-scheme: dark)");

export function chosenTheme(): Theme {
  const kept = window.localStorage.getItem(KEY);
  return THEMES.find((theme) => theme === kept) ?? "system";
}

export function chooseTheme(theme: Theme): void {
  window.localStorage.setItem(KEY, theme);
  showTheme();
}

export function showTheme(): void {
  const chosen = chosenTheme();
  const shown = chosen === "system" ? (dark.matches ? "dark" : "light") : chosen;
  document.documentElement.dataset["theme"] = shown;
}

export function followTheme(): void {
  showTheme();
  dark.addEventListener("change", showTheme);
}
