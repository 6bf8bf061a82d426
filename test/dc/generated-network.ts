import { mulberryShares } from '../shares.ts';
import type { Network } from './network.ts';

/** What a shape draws its figures from. */
export class Chance {
  /** From 0 up to, but not including, 1. */
  readonly share: () => number;

  constructor(seed: number) {
    this.share = mulberryShares(seed);
  }

  between = (low: number, high: number): number => low + (high - low) * this.share();
  /** Evenly over the decades, to four digits: as somebody would write it. */
  decades = (low: number, high: number): number => Number((low * (high / low) ** this.share()).toPrecision(4));
  whole = (low: number, high: number): number => low + Math.floor(this.share() * (high - low + 1));
  isSo = (share: number): boolean => this.share() < share;
  of = <T>(things: readonly T[]): T => things[this.whole(0, things.length - 1)] as T;
}

/** A wired net: its nodes, and the ohms of the way from its root to each, the most that a load there can see. */
interface Net {
  readonly nodes: readonly string[];
  readonly ohms: readonly number[];
}

/** What a shape builds with: nodes carry the network's own name, so that several fit into one deck. */
interface Site {
  readonly n: Network;
  readonly name: (node: string) => string;
  readonly c: Chance;
}

type Ohms = readonly [low: number, high: number];
const leads: Ohms = [1e-4, 0.3];
const anything: Ohms = [1e-4, 1e6];

function tree({ n, name, c }: Site, root: string, prefix: string, count: number, [low, high]: Ohms): Net {
  const nodes = [root];
  const ohms = [0];
  for (let i = 1; i <= count; i++) {
    const parent = c.whole(Math.max(0, i - 6), i - 1);
    const own = c.decades(low, high);
    const node = name(`${prefix}${i}`);
    n.resistor(nodes[parent] as string, node, own);
    nodes.push(node);
    ohms.push((ohms[parent] as number) + own);
  }
  return { nodes, ohms };
}

/** Further ways between nodes of a net. */
function links({ n, c }: Site, { nodes }: Net, count: number, [low, high]: Ohms) {
  for (let i = 0; i < count; i++) {
    const [a, b] = [c.of(nodes), c.of(nodes)];
    if (a !== b) n.resistor(a, b, c.decades(low, high));
  }
}

/**
 * Loads between two nets, each so small that all of them together leave every one well above its drop-out: a constant
 * power has two balances where its lead is too thin, and no program is wrong that finds the other.
 */
function loads({ n, c }: Site, plus: Net, minus: Net, volts: number, sourceOhms: number, count: number) {
  for (let k = 0; k < count; k++) {
    const [i, j] = [c.whole(0, plus.nodes.length - 1), c.whole(0, minus.nodes.length - 1)];
    const seen = ((plus.ohms[i] as number) + (minus.ohms[j] as number) + sourceOhms) * count;
    const law = c.of(['current', 'power', 'resistance'] as const);
    const amps = Math.min((c.between(0.01, 0.2) * volts) / seen, c.decades(0.01, 20));
    const amount = law === 'current' ? amps : law === 'power' ? amps * volts * 0.5 : volts / amps;
    n.load(plus.nodes[i] as string, minus.nodes[j] as string, law, Number(amount.toPrecision(4)), volts * 0.3);
  }
}

function treeOfLoads(site: Site, crossed: boolean) {
  const { n, name, c } = site;
  const volts = c.between(5, 30);
  const sourceOhms = c.decades(1e-3, 1);
  n.supply(name('p'), name('0'), volts, sourceOhms);
  const ohms = c.isSo(0.5) ? leads : anything;
  const plus = tree(site, name('p'), 'p', c.whole(3, 20), ohms);
  const minus = tree(site, name('0'), 'm', c.whole(1, 12), ohms);
  if (crossed) {
    links(site, plus, c.whole(2, 10), anything);
    links(site, minus, c.whole(2, 8), anything);
  }
  loads(site, plus, minus, volts, sourceOhms, c.whole(2, 8));
}

/** Boxes on one supply whose minus leads have coax braids and other screens beside them; here and there a lead is open. */
function parallelReturns(site: Site) {
  const { n, name, c } = site;
  const sourceOhms = c.decades(5e-3, 0.1);
  n.supply(name('p'), name('0'), 13.8, sourceOhms);
  const boxes = Array.from({ length: c.whole(2, 7) }, (_, i) => i);
  for (const i of boxes) {
    const [lead, back] = [c.decades(3e-3, 0.1), c.decades(3e-3, 0.1)];
    n.resistor(name('p'), name(`f${i}`), c.decades(1e-3, 0.12)).resistor(name(`f${i}`), name(`p${i}`), lead);
    n.resistor(name(`m${i}`), name('0'), i > 0 && c.isSo(0.3) ? 1e9 : back);
    n.resistor(name(`m${i}`), name(`box${i}`), 0.005);
    if (i > 0) n.resistor(name(`box${i}`), name(`box${c.whole(0, i - 1)}`), c.decades(4e-3, 0.2));
  }
  for (let k = 0; k < boxes.length; k++) {
    const [a, b] = [c.of(boxes), c.of(boxes)];
    if (a !== b) n.resistor(name(`box${a}`), name(`box${b}`), c.decades(4e-3, 1e6));
  }
  const net = (side: string): Net => ({ nodes: boxes.map((i) => name(`${side}${i}`)), ohms: boxes.map(() => 0.3) });
  loads(site, net('p'), net('m'), 13.8, sourceOhms, boxes.length);
}

/** Leads that starve what hangs on them: constant currents and resistances below their drop-out, some the wrong way round. */
function starving(site: Site) {
  const { n, name, c } = site;
  n.supply(name('p'), name('0'), 12, c.decades(0.01, 1));
  const plus = tree(site, name('p'), 'p', c.whole(3, 10), [0.01, 100]);
  const minus = tree(site, name('0'), 'm', c.whole(1, 5), [0.01, 10]);
  for (let k = c.whole(2, 6); k > 0; k--) {
    const ends: [string, string] = [c.of(plus.nodes), c.of(minus.nodes)];
    const law = c.of(['current', 'resistance'] as const);
    n.load(...(c.isSo(0.2) ? ([ends[1], ends[0]] as const) : ends), law, c.decades(0.1, 10), c.between(3, 9));
  }
}

/** A supply at its limit: it holds its current into a short and into loads, or has switched off. */
function limited(site: Site) {
  const { n, name, c } = site;
  const peak = c.decades(0.5, 5);
  n.supply(name('p'), name('0'), 13.8, c.decades(0.01, 0.1), peak, c.isSo(0.8) ? 'limits' : 'shutsDown');
  const plus = tree(site, name('p'), 'p', c.whole(2, 10), leads);
  const minus = tree(site, name('0'), 'm', c.whole(1, 5), leads);
  n.resistor(plus.nodes.at(-1) as string, minus.nodes.at(-1) as string, c.between(0.2, 1.2) * (13.8 / peak));
  for (let k = c.whole(1, 4); k > 0; k--)
    n.load(c.of(plus.nodes), c.of(minus.nodes), 'current', Number((peak * c.between(0.05, 0.5)).toPrecision(4)), 6);
}

/** Supplies side by side, the lower one idle, and batteries that take what another gives. */
function sideBySide(site: Site) {
  const { n, name, c } = site;
  const plus = tree(site, name('p'), 'p', c.whole(3, 8), leads);
  const minus = tree(site, name('0'), 'm', c.whole(1, 4), leads);
  n.battery(name('p'), name('0'), c.between(12.4, 13.2), c.decades(4e-3, 0.05));
  for (let k = c.whole(1, 3); k > 0; k--) {
    const add = c.isSo(0.4) ? n.battery.bind(n) : n.supply.bind(n);
    add(c.of(plus.nodes), c.of(minus.nodes), c.between(11.8, 14.2), c.decades(5e-3, 0.3));
  }
  loads(site, plus, minus, 12, 0.3, c.whole(2, 6));
}

/** Diodes in series with loads, from several supplies to one bar, and across loads against reversal. */
function diodes(site: Site) {
  const { n, name, c } = site;
  const junction = (): [number, number, number] => [c.decades(1e-12, 1e-5), c.between(1, 2), c.decades(1e-3, 0.1)];
  for (let k = c.whole(1, 3); k > 0; k--) {
    const add = c.isSo(0.5) ? n.battery.bind(n) : n.supply.bind(n);
    add(name(`s${k}`), name('0'), c.between(11.5, 15), c.decades(5e-3, 0.2));
    n.diode(name(`s${k}`), name('p'), ...junction());
  }
  const plus = tree(site, name('p'), 'p', c.whole(2, 8), leads);
  const minus = tree(site, name('0'), 'm', c.whole(1, 4), leads);
  for (let k = c.whole(1, 3); k > 0; k--) {
    const [from, to] = [c.of(plus.nodes), c.of(minus.nodes)];
    n.diode(from, name(`d${k}`), ...junction());
    n.load(name(`d${k}`), to, c.of(['current', 'power', 'resistance'] as const), c.decades(0.3, 8), 4);
    if (c.isSo(0.5)) n.diode(to, name(`d${k}`), ...junction());
  }
  loads(site, plus, minus, 11, 0.5, c.whole(1, 4));
}

/** Key, mute and relay lines: pull-ups from a unit's own plus or a cell of its own, closed, open, or leaking. */
function controlLines(site: Site) {
  const { n, name, c } = site;
  n.supply(name('p'), name('0'), 13.8, c.decades(0.01, 0.1));
  const plus = tree(site, name('p'), 'p', c.whole(2, 8), leads);
  const minus = tree(site, name('0'), 'm', c.whole(1, 5), leads);
  for (let k = c.whole(2, 7); k > 0; k--) {
    const [line, reference] = [name(`line${k}`), c.of(minus.nodes)];
    n.pullUp(line, reference, c.of([3.3, 5, 8, 12]), c.decades(470, 1e5), c.isSo(0.6) ? c.of(plus.nodes) : null);
    n.resistor(line, name(`end${k}`), c.decades(0.01, 1));
    n.resistor(name(`end${k}`), c.of(minus.nodes), c.of([0.1, 1.5, 100, 1e6, 1e9]));
    if (c.isSo(0.3)) n.resistor(line, name(`line${c.whole(1, k)}`), c.decades(1, 1e6));
  }
  loads(site, plus, minus, 13.8, 0.1, c.whole(2, 5));
}

/** Converters from one supply, their outputs on the common minus or apart from it. */
function converters(site: Site) {
  const { n, name, c } = site;
  n.supply(name('p'), name('0'), c.between(12, 28), c.decades(0.01, 0.1));
  const plus = tree(site, name('p'), 'p', c.whole(2, 6), leads);
  const minus = tree(site, name('0'), 'm', c.whole(1, 4), leads);
  for (let k = c.whole(1, 3); k > 0; k--) {
    const back = c.isSo(0.5) ? c.of(minus.nodes) : name(`q${k}0`);
    const volts = c.of([3.3, 5, 9, 12]);
    const [input, inputBack] = [c.of(plus.nodes), c.of(minus.nodes)];
    n.converter(input, inputBack, name(`q${k}`), back, volts, c.between(0.6, 0.95), c.decades(0.01, 1));
    loads(
      site,
      tree(site, name(`q${k}`), `q${k}-`, c.whole(1, 4), leads),
      { nodes: [back], ohms: [0.3] },
      volts,
      0.3,
      2,
    );
  }
  loads(site, plus, minus, 12, 0.1, c.whole(1, 4));
}

const shapes: readonly (readonly [name: string, build: (site: Site) => void])[] = [
  ['tree', (site) => treeOfLoads(site, false)],
  ['mesh', (site) => treeOfLoads(site, true)],
  ['returns in parallel', parallelReturns],
  ['starving loads', starving],
  ['a supply at its limit', limited],
  ['supplies side by side', sideBySide],
  ['diodes', diodes],
  ['control lines', controlLines],
  ['converters', converters],
];

export const shapeOf = (seed: number): string => shapes[seed % shapes.length]?.[0] ?? '';

/** Adds the network of a seed, its nodes named `seed:…`; seeds go through the shapes one after the other. */
export function addGenerated(n: Network, seed: number) {
  const site = { n, name: (node: string) => `${seed}:${node}`, c: new Chance(seed * 7919 + 1) };
  shapes[seed % shapes.length]?.[1](site);
}
