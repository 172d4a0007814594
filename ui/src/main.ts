import { mount } from "svelte";

import App from "./App.svelte";
import "./look/base.css";
import { followTheme } from "./theme";

const target = document.getElementById("app");
if (!target) throw new Error("The page has no place for the app");

followTheme();
mount(App, { target });
