import { svelte } from "@sveltejs/vite-plugin-svelte";
import { svelteTesting } from "@testing-library/svelte/vite";
import { defineConfig } from "vitest/config";

export default defineConfig({
  plugins: [svelte(), svelteTesting()],
  build: {
    target: "safari15",
    // The content security policy allows neither inline data nor inline scripts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: { port: 5173, strictPort: true },
  test: { environment: "happy-dom", include: ["src/**/*.test.ts"] },
});
