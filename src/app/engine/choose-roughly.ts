import { evaluate } from "../../plan/optimiser/evaluate.ts";
import type { Plan, SessionProblem } from "../../plan/optimiser/problem.ts";
function pathBetween(problem: SessionProblem, from: string, to: string): string[] | null {
  const best = new Map<string, { cost: number; links: string[] }>([[from, { cost: 0, links: [] }]]);
  const open = [from];
  while (open.length > 0) {
    open.sort((a, b) => (best.get(a)?.cost ?? 0) - (best.get(b)?.cost ?? 0));
    const at = open.shift() as string;
    if (at === to) return best.get(at)?.links ?? null;
    for (const link of problem.links) if (link.from === at) {
      const cost = (best.get(at)?.cost ?? 0) + link.halfMinutes + 4 * link.kneelDowns;
      const known = best.get(link.to);
      if (known === undefined || cost < known.cost) { best.set(link.to, { cost, links: [...(best.get(at)?.links ?? []), link.id] }); open.push(link.to); }
    }
  }
  return null;
}
export function chooseRoughly(problem: SessionProblem): { plan: Plan | null; status: string; gap: number } {
  const link = (blocks: { position: string; options: string[] }[]): Plan | null => {
    const out = [];
    for (let k = 0; k < blocks.length; k++) {
      const b = blocks[k] as { position: string; options: string[] };
      const links = k === 0 ? [] : pathBetween(problem, (blocks[k - 1] as { position: string }).position, b.position);
      if (links === null) return null;
      out.push({ ...b, links });
    }
    return { blocks: out };
  };
  let blocks: { position: string; options: string[] }[] = [];
  let score = Number.NEGATIVE_INFINITY;
  for (let step = 0; step < 14; step++) {
    let bestBlocks: typeof blocks | null = null;
    let best = score;
    const tryIt = (candidate: typeof blocks) => {
      const plan = link(candidate.filter((b) => b.options.length > 0));
      if (plan === null) return;
      const e = evaluate(problem, plan);
      if (e.broken.some((b) => b.rule !== "must-have")) return;
      const total = e.worth.total - 1000 * e.broken.length;
      if (total > best) { best = total; bestBlocks = candidate.filter((b) => b.options.length > 0); }
    };
    for (const option of problem.options) {
      const at = blocks.findIndex((b) => b.position === option.position);
      if (at >= 0) { tryIt(blocks.map((b, k) => (k === at ? { ...b, options: [...b.options, option.id] } : b))); }
      else for (let k = 0; k <= blocks.length; k++) tryIt([...blocks.slice(0, k), { position: option.position, options: [option.id] }, ...blocks.slice(k)]);
      blocks.forEach((b, i) => b.options.forEach((_, j) => { if (b.position === option.position) tryIt(blocks.map((x, k) => (k === i ? { ...x, options: x.options.map((o, n) => (n === j ? option.id : o)) } : x))); }));
    }
    blocks.forEach((b, i) => b.options.forEach((_, j) => tryIt(blocks.map((x, k) => (k === i ? { ...x, options: x.options.filter((__, n) => n !== j) } : x)))));
    if (bestBlocks === null) break;
    blocks = bestBlocks; score = best;
  }
  return { plan: blocks.length === 0 ? null : link(blocks), status: "limit", gap: 0 };
}
