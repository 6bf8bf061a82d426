import { fuseBreakingAmps, fuseOhms } from '../../catalog/wire/fuses.ts';
import type { ElementOf, UnitElement } from '../../station/schema/unit-kind.ts';
import { type Gate, never, type Resistor } from '../circuit.ts';
import { addRf } from './add-rf.ts';
import { addSignal } from './add-signal.ts';
import { sourceParts } from './source-parts.ts';
import type { UnitDraft } from './unit-draft.ts';

/** Adds what an element of a unit is in the circuit; nothing where a setting rules it out. */
export function addElement(draft: UnitDraft, element: UnitElement) {
  // A path that a setting rules out still leaks: an unselected position of a switch is not an absent one.
  const gate = draft.gateFor(element.when) ?? (element.type === 'rfPath' ? never : null);
  if (!gate) return;
  const { parts } = draft.fragment;
  const node = (contact: string) => draft.node(contact);
  const origin = draft.originOf(element.id);
  switch (element.type) {
    case 'conductor': {
      const fuse = fuseOf(element);
      const ohms = element.ohms + (fuse ? fuseOhms(fuse.ratedAmps, fuse.family) : 0);
      const ends = { a: node(element.from), b: node(element.to) };
      parts.push({ kind: 'resistor', ...ends, ohms, gate, origin, ...(fuse && { fuse }) });
      break;
    }
    case 'contactPair': {
      const ends = { a: node(element.from), b: node(element.to) };
      parts.push({ kind: 'resistor', ...ends, ohms: element.onOhms, gate, origin });
      break;
    }
    case 'supply':
    case 'battery':
    case 'converter':
    case 'diode':
      parts.push(...sourceParts(element, node, { gate, origin }));
      break;
    case 'load':
      addLoad(draft, element, gate);
      break;
    case 'pullUp': {
      const feed = draft.kind.elements.find((e) => e.type === 'load');
      const fedFrom = feed ? node(feed.plus) : null;
      const reference = node(element.reference ?? 'chassis');
      parts.push({ kind: 'pullUp', node: node(element.contact), reference, fedFrom, spec: element, gate, origin });
      break;
    }
    case 'audioSource':
    case 'audioLoad':
    case 'dataEnd':
      addSignal(draft, element, gate);
      break;
    default:
      addRf(draft, element, gate);
  }
}

function fuseOf({ fuseAmps, fuseFamily = 'blade', fuseBreakingAmps: own }: ElementOf<'conductor'>): Resistor['fuse'] {
  if (fuseAmps === undefined) return undefined;
  return { ratedAmps: fuseAmps, family: fuseFamily, breakingAmps: own ?? fuseBreakingAmps(fuseAmps, fuseFamily) };
}

function addLoad(draft: UnitDraft, load: ElementOf<'load'>, gate: Gate) {
  const states = (load.states ?? []).flatMap((state) => {
    const stateGate = draft.gateFor(state.when);
    return stateGate ? [{ gate: stateGate, amount: state.amount }] : [];
  });
  draft.fragment.parts.push({
    kind: 'load',
    plus: draft.node(load.plus),
    minus: draft.node(load.minus),
    spec: load,
    states,
    dropOutV: load.dropOutV ?? load.minV / 2,
    gate,
    origin: draft.originOf(load.id),
  });
}
