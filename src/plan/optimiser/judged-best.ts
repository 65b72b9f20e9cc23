import { coverageGain, type Plan, sizeLimits } from "./problem.ts";
import { compareTies, inOrder, type Item, type Order, tieKey } from "./selection.ts";
import { nodeOf, type Task } from "./task.ts";

/** The best plan in hand; every selection offered is judged exactly, in every order of its positions. */
export class JudgedBest {
  plan: Plan | null = null;
  worth = Number.NEGATIVE_INFINITY;
  private ties: readonly number[] = [];
  private readonly task: Task;

  constructor(task: Task) {
    this.task = task;
  }

  /** @param orders cheapest first */
  offer(chosen: readonly Item[], orders: readonly Order[]): void {
    const { problem, must, baseline } = this.task;
    for (const rung of must) if (!chosen.some((item) => item.option.rung === rung)) return;
    for (const { option } of chosen)
      if (option.prerequisite !== null && !chosen.some((item) => item.option.rung === option.prerequisite)) return;
    let base = baseline - Math.max(0, sizeLimits.fewestItems - chosen.length) * problem.prices.itemShort;
    this.task.gains.forEach((_, k) => {
      let units = 0;
      for (const item of chosen) units += item.units[k] ?? 0;
      if (units > 0) base += coverageGain(problem.purposes[k]?.need ?? 0, units);
    });
    const places = new Set<string>();
    let halfMinutes = 0;
    for (const item of chosen) {
      base += item.own;
      halfMinutes += item.option.halfMinutes;
      places.add(`${item.position}|${item.option.helperPlace}`);
    }
    base -= places.size * problem.prices.helperPlace;
    const own = new Map<number, readonly Item[]>();
    for (const order of orders) {
      let worth = base - order.cost;
      if (worth < this.worth) break;
      if (halfMinutes + order.halfMinutes > problem.workingHalfMinutes) continue;
      for (const item of chosen) worth -= item.option.freshnessCost * order.positions.indexOf(item.position);
      if (worth < this.worth) continue;
      if (own.size === 0)
        for (const position of order.positions)
          own.set(position, inOrder(chosen.filter((item) => item.position === position)));
      if (!this.fits(order, own)) continue;
      const blocks = order.positions.map((position, k) => ({
        position: nodeOf(this.task, position).id,
        links: [...(order.ways[k]?.links ?? [])],
        options: (own.get(position) ?? []).map((item) => item.option.id),
      }));
      const plan: Plan = { blocks };
      const ties = tieKey(chosen, order, plan, problem);
      if (this.plan === null || worth > this.worth || compareTies(ties, this.ties) < 0) {
        this.plan = plan;
        this.worth = worth;
        this.ties = ties;
      }
    }
  }

  /** Whether strength for the way back at every point, freshness and what must come first allow an order. */
  private fits(order: Order, own: ReadonlyMap<number, readonly Item[]>): boolean {
    const { problem } = this.task;
    const done: string[] = [];
    let spent = 0;
    for (let k = 0; k < order.positions.length; k++) {
      const position = order.positions[k] ?? 0;
      const node = nodeOf(this.task, position);
      if (k === 0) spent += node.entry?.strength ?? 0;
      else {
        const way = order.ways[k];
        if (way === null || way === undefined) return false;
        for (const point of way.points) {
          if (point.threshold !== null && spent + point.before > point.threshold) return false;
          if (spent + point.after + point.wayBack > problem.strength) return false;
        }
        spent += way.strength;
      }
      if (spent + node.wayBack.strength > problem.strength) return false;
      const onEntering = spent;
      for (const { option } of own.get(position) ?? []) {
        if (option.freshnessLimit !== null && onEntering > option.freshnessLimit) return false;
        if (option.prerequisite !== null && !done.includes(option.prerequisite)) return false;
        done.push(option.rung);
        spent += option.strength;
      }
      if (spent + node.wayBack.strength > problem.strength) return false;
    }
    return true;
  }
}
