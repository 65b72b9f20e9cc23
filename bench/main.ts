import { mkdirSync, writeFileSync } from "node:fs";
import { availableParallelism, cpus, loadavg } from "node:os";
import { runBench as benchFigures } from "./figures.bench.ts";
import { runBench as benchMechanics } from "./mechanics.bench.ts";
import { runBench as benchPlan } from "./plan.bench.ts";
import type { BenchRow } from "./timing.ts";

const PARTS = { mechanics: benchMechanics, figures: benchFigures, plan: benchPlan } as const;

/** Three figures that matter, no more. */
function say(value: number | undefined): string {
  if (value === undefined) return "";
  return value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2);
}

function sayTarget({ target, median, unit }: BenchRow): string {
  return target === undefined ? "" : `${say(target)} ${unit}, ${median <= target ? "kept" : "missed"}`;
}

function tableOf(rows: readonly BenchRow[]): string {
  const cells = rows.map((row) => [
    row.what,
    `${say(row.median)} ${row.unit}`,
    `${say(row.low)} to ${say(row.high)}`,
    row.rival === undefined ? "" : `${row.rival}: ${say(row.rivalMedian)} ${row.unit}`,
    sayTarget(row),
  ]);
  const lines = [
    ["what", "median", "10 to 90 %", "rival, same run", "target"],
    ["---", "---", "---", "---", "---"],
    ...cells,
  ];
  return lines.map((line) => `| ${line.join(" | ")} |`).join("\n");
}

const before = loadavg()[0] ?? 0;
const rows: BenchRow[] = [];
for (const [name, bench] of Object.entries(PARTS)) {
  if (process.argv.length > 2 && !process.argv.includes(name)) continue;
  rows.push(...(await bench()));
}
const machine = {
  processor: cpus()[0]?.model ?? "unknown",
  cores: availableParallelism(),
  node: process.version,
  loadBefore: before,
  loadAfter: loadavg()[0] ?? 0,
};
mkdirSync("build", { recursive: true });
writeFileSync("build/bench.json", `${JSON.stringify({ machine, rows }, null, 2)}\n`);
console.log(tableOf(rows));
console.log(
  `\n${machine.processor}, ${machine.cores} cores, Node ${machine.node}; load ${say(before)} before, ${say(machine.loadAfter)} after; also in build/bench.json`,
);
