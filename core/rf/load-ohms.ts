import type { RfLoad } from '../circuit/circuit.ts';
import type { Complex } from '../quantity/complex.ts';
import { systemOhms } from './system-ohms.ts';

type LoadSpec = Pick<RfLoad['spec'], 'ohms' | 'reactance' | 'swr' | 'table'>;

/** What a load shows in ohms, and how far that can be trusted. */
export interface LoadOhms {
  readonly ohms: Complex;
  /** `swr`: only its size in 50 ohms is known, not its phase; `beyond`: the frequency is outside its table. */
  readonly doubt: 'swr' | 'beyond' | null;
}

/**
 * Impedance in ohms of an antenna or a load at a frequency: from its table, R and X straight over the logarithm of
 * frequency between two rows and the nearest row outside; else as a resistance of 50 Ω times its SWR; else its one
 * point at any frequency.
 */
export function loadOhms({ ohms, reactance = 0, swr, table }: LoadSpec, hertz: number): LoadOhms {
  const [first] = table ?? [];
  if (table && first) return inTable(table, first, hertz);
  if (swr !== undefined) return { ohms: { re: systemOhms * swr, im: 0 }, doubt: 'swr' };
  return { ohms: { re: ohms, im: reactance }, doubt: null };
}

type Row = NonNullable<LoadSpec['table']>[number];

function inTable(table: readonly Row[], first: Row, hertz: number): LoadOhms {
  const above = table.findIndex(({ hz }) => hz >= hertz);
  const high = table[above] ?? (table.at(-1) as Row);
  const low = table[above - 1] ?? first;
  if (above === -1 || (above === 0 && high.hz > hertz)) {
    const end = above === -1 ? high : first;
    return { ohms: { re: end.ohms, im: end.reactance ?? 0 }, doubt: 'beyond' };
  }
  const along = high.hz === low.hz ? 0 : Math.log(hertz / low.hz) / Math.log(high.hz / low.hz);
  const mix = (a: number, b: number) => a + (b - a) * along;
  return { ohms: { re: mix(low.ohms, high.ohms), im: mix(low.reactance ?? 0, high.reactance ?? 0) }, doubt: null };
}
