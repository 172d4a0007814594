import { mount } from "svelte";

import App from "./App.svelte";
import { settings, soundness } from "./client";
import "./look/base.css";
import { speak } from "./text";
import { chooseTheme, followTheme, themeNamed } from "./theme";
import type { Soundness } from "./types/Soundness";

const target = document.getElementById("app");
if (!target) throw new Error("The page has no place for the app");

followTheme();
let sound: Soundness | null = null;
try {
  const chosen = await settings();
  speak(chosen.language);
  chooseTheme(themeNamed(chosen.theme));
  sound = await soundness();
} catch {
  // The screens say themselves what the engine cannot do; in English until then.
}
mount(App, { target, props: { found: sound } });
