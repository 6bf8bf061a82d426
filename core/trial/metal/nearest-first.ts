/** Nodes that wait to be looked at, the one with the least resistance first; a binary heap. */
export class NearestFirst {
  private readonly waiting: { readonly node: number; readonly ohms: number }[] = [];

  put(node: number, ohms: number) {
    const { waiting } = this;
    const entry = { node, ohms };
    let at = waiting.length;
    waiting.push(entry);
    while (at > 0) {
      const above = (at - 1) >> 1;
      const parent = waiting[above];
      if (!parent || parent.ohms <= ohms) break;
      waiting[at] = parent;
      at = above;
    }
    waiting[at] = entry;
  }

  take(): { readonly node: number; readonly ohms: number } | undefined {
    const { waiting } = this;
    const [first] = waiting;
    const last = waiting.pop();
    if (!last || waiting.length === 0) return first;
    let at = 0;
    for (;;) {
      const left = 2 * at + 1;
      const [one, other] = [waiting[left], waiting[left + 1]];
      if (!one) break;
      const below = other && other.ohms < one.ohms ? left + 1 : left;
      const child = below === left ? one : (other ?? one);
      if (child.ohms >= last.ohms) break;
      waiting[at] = child;
      at = below;
    }
    waiting[at] = last;
    return first;
  }
}
