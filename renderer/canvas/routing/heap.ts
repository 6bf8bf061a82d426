/** A queue of numbers that gives the one of least cost first. */
export class CostQueue {
  private readonly items: number[] = [];
  private readonly costs: number[] = [];

  get size(): number {
    return this.items.length;
  }

  clear() {
    this.items.length = 0;
    this.costs.length = 0;
  }

  push(item: number, cost: number) {
    const { items, costs } = this;
    let at = items.length;
    items.push(item);
    costs.push(cost);
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if ((costs[parent] ?? 0) <= cost) break;
      this.copy(parent, at);
      at = parent;
    }
    items[at] = item;
    costs[at] = cost;
  }

  pop(): number {
    const { items, costs } = this;
    const least = items[0] ?? -1;
    const item = items.pop() ?? -1;
    const cost = costs.pop() ?? 0;
    const size = items.length;
    if (size === 0) return least;
    let at = 0;
    for (;;) {
      let child = at * 2 + 1;
      if (child >= size) break;
      if (child + 1 < size && (costs[child + 1] ?? 0) < (costs[child] ?? 0)) child++;
      if ((costs[child] ?? 0) >= cost) break;
      this.copy(child, at);
      at = child;
    }
    items[at] = item;
    costs[at] = cost;
    return least;
  }

  private copy(from: number, to: number) {
    this.items[to] = this.items[from] ?? -1;
    this.costs[to] = this.costs[from] ?? 0;
  }
}
