/**
 * A queue of numbers that gives the one of least cost first. It has its own heap: the core's holds nodes with their ohms as
 * objects, this one whole numbers in plain arrays that every search uses anew.
 */
export class CostQueue {
  size = 0;
  // Of one kind of number each, and never shorter than before: the queue is what a search spends its time in.
  private items = new Int32Array(1024);
  private costs = new Float64Array(1024);

  clear() {
    this.size = 0;
  }

  push(item: number, cost: number) {
    if (this.size === this.items.length) this.grow();
    const { items, costs } = this;
    let at = this.size++;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      const parentCost = costs[parent] as number;
      if (parentCost <= cost) break;
      items[at] = items[parent] as number;
      costs[at] = parentCost;
      at = parent;
    }
    items[at] = item;
    costs[at] = cost;
  }

  /** -1 where there is none. */
  pop(): number {
    if (this.size === 0) return -1;
    const { items, costs } = this;
    const least = items[0] as number;
    const size = --this.size;
    const item = items[size] as number;
    const cost = costs[size] as number;
    let at = 0;
    for (;;) {
      let child = at * 2 + 1;
      if (child >= size) break;
      let childCost = costs[child] as number;
      if (child + 1 < size) {
        const otherCost = costs[child + 1] as number;
        if (otherCost < childCost) {
          child++;
          childCost = otherCost;
        }
      }
      if (childCost >= cost) break;
      items[at] = items[child] as number;
      costs[at] = childCost;
      at = child;
    }
    items[at] = item;
    costs[at] = cost;
    return least;
  }

  private grow() {
    const { items, costs } = this;
    this.items = new Int32Array(items.length * 2);
    this.costs = new Float64Array(costs.length * 2);
    this.items.set(items);
    this.costs.set(costs);
  }
}
