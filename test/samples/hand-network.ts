type Branch = readonly [from: string, to: string, ohms: number];

/**
 * Volts above `bar` at each node of a small network of resistances with currents fed in, by plain Gaussian
 * elimination: what one does on paper with as many equations as nodes. Apart from the core on purpose.
 */
export function solveReturns<N extends string>(
  amps: Record<N, number>,
  branches: readonly Branch[],
): Record<N, number> {
  const nodes = [...new Set(branches.flatMap(([a, b]) => [a, b]))].filter((n) => n !== 'bar');
  const rows = nodes.map((node) => {
    const row = [...nodes.map(() => 0), amps[node as N] ?? 0];
    for (const [a, b, ohms] of branches) {
      if (a !== node && b !== node) continue;
      const i = nodes.indexOf(node);
      const k = nodes.indexOf(a === node ? b : a);
      row[i] = (row[i] ?? 0) + 1 / ohms;
      if (k >= 0) row[k] = (row[k] ?? 0) - 1 / ohms;
    }
    return row;
  });
  rows.forEach((pivot, i) => {
    rows.forEach((row, k) => {
      if (k === i) return;
      const factor = (row[i] ?? 0) / (pivot[i] ?? 1);
      pivot.forEach((value, j) => {
        row[j] = (row[j] ?? 0) - factor * value;
      });
    });
  });
  return Object.fromEntries(nodes.map((node, i) => [node, (rows[i]?.at(-1) ?? 0) / (rows[i]?.[i] ?? 1)])) as Record<
    N,
    number
  >;
}
