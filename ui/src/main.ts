import { mount } from "svelte";

import App from "./App.svelte";
import { settings } from "./client";
import "./look/base.css";
import { speak } from "./text";
import { chooseTheme, followTheme, themeNamed } from "./theme";

const target = document.getElementById("app");
if (!target) throw new Error("The page has no place for the app");

followTheme();
try {
  const chosen = await settings();
  speak(chosen.language);
  chooseTheme(themeNamed(chosen.theme));
} catch {
  // The screens say themselves what the engine cannot do; in English until then.
}
mount(App, { target });
