import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";

export default defineConfig({
  root: "src/app/client",
  base: "/",
  plugins: [
    react(),
    VitePWA({
      // A new version never takes over in the middle of a session: the page asks first.
      registerType: "prompt",
      injectRegister: false,
      workbox: {
        globPatterns: ["**/*.{html,js,css,wasm,woff2,svg,webmanifest}"],
        maximumFileSizeToCacheInBytes: 8_000_000,
        navigateFallback: "index.html",
        navigateFallbackDenylist: [/^\/api\//],
      },
      manifest: {
        name: "Matside",
        short_name: "Matside",
        description: "Today's session at the mat, computed for the person in front of you.",
        display: "standalone",
        start_url: "/",
        icons: [{ src: "icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" }],
      },
    }),
  ],
  worker: { format: "es" },
  build: {
    outDir: "../../../dist/page",
    emptyOutDir: true,
    target: "es2022",
    // The wasm file and the fonts stay files of their own: inlined they would count in the first view.
    assetsInlineLimit: 0,
  },
  server: { host: "127.0.0.1", proxy: { "/api": "http://127.0.0.1:4680" } },
});
