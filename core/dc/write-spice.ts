import {
  type ActorStates,
  type Circuit,
  type CircuitPart,
  isOpenGate,
  type LoadPart,
  type Origin,
} from '../circuit/circuit.ts';
import { leastOhms } from '../quantity/least-ohms.ts';
import type { DcSolution } from './dc-solution.ts';
import { reversedShare } from './devices/load.ts';
import { IslandFinder } from './islands.ts';

/**
 * The DC network in one state as a SPICE deck: the same contacts, conductors, loads and supplies, for checking the
 * solution with another program. Nodes are `n` and their number, each named in a comment; the reference of every
 * island is node 0. A supply that limits or is off in the solution is written as what it then is.
 */
export function writeSpice(
  circuit: Circuit,
  title: string,
  on: ActorStates,
  open: ReadonlySet<number>,
  dc: DcSolution,
): string {
  const islands = new IslandFinder(circuit).find(on, open);
  const node = (n: number) => (islands.reference[n] === 1 ? '0' : `n${n}`);
  const used = new Set<number>();
  const lines = circuit.parts.flatMap((part, i) => {
    if (islands.inForce[i] === 0) return [];
    for (const n of nodesOf(part)) used.add(n);
    return [`* ${nameOf(part.origin)}`, ...cardsOf(part, i, node, on, dc, circuit)];
  });
  const names = [...used].sort((a, b) => a - b).map((n) => `* ${node(n)} = ${circuit.nodes[n]}`);
  const free = [...used].filter((n) => islands.reference[n] !== 1);
  return [
    `* ${title.replace(/\s+/g, ' ')}`,
    ...names,
    ...lines,
    '.options reltol=1e-10 abstol=1e-14 vntol=1e-12 gmin=1e-18 itl1=2000 temp=27 tnom=27',
    '.control',
    'set numdgt=12',
    'op',
    ...free.map((n) => `print v(n${n})`),
    '.endc',
    '.end',
    '',
  ].join('\n');
}

const nodesOf = (part: CircuitPart): number[] => {
  if (part.kind === 'resistor') return [part.a, part.b];
  if (part.kind === 'diode') return [part.anode, part.cathode];
  if (part.kind === 'pullUp') return [part.node, part.reference, ...(part.fedFrom === null ? [] : [part.fedFrom])];
  return [part.plus, part.minus];
};

/** What a program that reads the deck takes for kT/q at 27 °C: an emission coefficient is told against it. */
const deckThermalVolts = 0.025864917;

function nameOf(origin: Origin): string {
  switch (origin.type) {
    case 'element':
      return `${origin.unit} ${origin.element}`;
    case 'chassis':
      return `${origin.unit} ${origin.contact} to chassis`;
    case 'mate':
      return `cable ${origin.cable} end ${origin.end} in ${origin.unit}.${origin.port}.${origin.contact}`;
    case 'wire':
      return `cable ${origin.cable} ${origin.role}`;
    case 'cableFuse':
      return `cable ${origin.cable} fuse`;
  }
}

function cardsOf(
  part: CircuitPart,
  i: number,
  node: (n: number) => string,
  on: ActorStates,
  dc: DcSolution,
  circuit: Circuit,
): string[] {
  switch (part.kind) {
    case 'resistor':
      return [`R${i} ${node(part.a)} ${node(part.b)} ${Math.max(part.ohms, leastOhms)}`];
    case 'supply': {
      const [plus, minus] = [node(part.plus), node(part.minus)];
      const mode = dc.modes.get(i);
      if (mode === 'limiting') return [`I${i} ${minus} ${plus} DC ${part.spec.peakAmps}`];
      if (mode !== 'regulating') return [`R${i} ${plus} ${minus} 1e12`];
      return [
        `V${i} s${i} ${minus} DC ${part.spec.volts}`,
        `R${i} s${i} ${plus} ${Math.max(part.spec.sourceOhms, leastOhms)}`,
      ];
    }
    case 'diode': {
      const model = `.model M${i} D(IS=${part.saturationAmps} N=${part.slopeVolts / deckThermalVolts} RS=${part.ohms})`;
      return [`D${i} ${node(part.anode)} ${node(part.cathode)} M${i}`, model];
    }
    case 'pullUp': {
      // A regulator takes from the unit's plus what it gives through the resistor; a cell of its own gives it from below.
      const from = part.fedFrom === null ? part.reference : part.fedFrom;
      const [top, contact, reference] = [node(from), node(part.node), node(part.reference)];
      return [
        `B${i} ${top} ${contact} I = (${part.spec.volts} - (${difference(contact, reference)}))/${Math.max(part.spec.ohms, leastOhms)}`,
      ];
    }
    case 'load':
      return loadCards(part, i, node, amountOf(part, on, dc, circuit));
  }
}

/** What a load wants, as a number or as a sum for the other program: a converter's input pays for what its output gives. */
function amountOf(part: LoadPart, on: ActorStates, dc: DcSolution, { parts }: Circuit): number | string {
  const { converter } = part;
  if (!converter) return part.states.find((s) => isOpenGate(s.gate, on))?.amount ?? part.spec.amount;
  const i = parts.findIndex((p) => p.kind === 'supply' && p.converter?.name === converter.name);
  const output = parts[i];
  const mode = dc.modes.get(i);
  if (output?.kind !== 'supply' || (mode !== 'regulating' && mode !== 'limiting')) return converter.idleWatts;
  const given = mode === 'limiting' ? output.spec.peakAmps : `(-I(V${i}))`;
  return `(${converter.idleWatts}+${given}*${output.spec.volts / converter.efficiency})`;
}

function loadCards(part: LoadPart, i: number, node: (n: number) => string, amount: number | string): string[] {
  const [plus, minus] = [node(part.plus), node(part.minus)];
  const volts = difference(plus, minus);
  const least = Math.max(part.dropOutV, 1e-3);
  const leak = `R${i} ${plus} ${minus} 1e12`;
  if (amount === 0) return [leak];
  const { law } = part.spec;
  const full = law === 'resistance' ? `(${volts})/${amount}` : law === 'power' ? `${amount}/(${volts})` : `${amount}`;
  const siemens = law === 'resistance' ? `1/${amount}` : `${amount}/${law === 'power' ? least * least : least}`;
  const fading = `${siemens}*(${volts})`;
  const reversed = `${reversedShare}*${siemens}*(${volts})`;
  return [
    leak,
    `B${i} ${plus} ${minus} I = (${volts}) >= ${least} ? ${full} : ((${volts}) > 0 ? ${fading} : ${reversed})`,
  ];
}

const difference = (a: string, b: string): string => `V(${a})${b === '0' ? '' : `-V(${b})`}`;
