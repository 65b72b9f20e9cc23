import { defineConfig } from "vitest/config";

const exclude = ["node_modules/**", "dist/**", "build/**"];

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "main",
          environment: "node",
          include: ["src/**/*.test.ts", "src/**/*.test.tsx", "checks/**/*.test.ts", "test/**/*.test.ts"],
          exclude: [...exclude, "test/browser/**"],
          testTimeout: 20_000,
        },
      },
      {
        test: {
          name: "browser",
          environment: "node",
          include: ["test/browser/**/*.test.ts"],
          exclude,
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
