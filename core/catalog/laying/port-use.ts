import type { Connector } from '../../station/schema/connector.ts';
import type { Port, UnitElement, UnitKind } from '../../station/schema/unit-kind.ts';

/** Whether something comes out of a port, goes into it, or either. */
export type Flow = 'gives' | 'takes' | 'either';

/**
 * Which way power, RF, audio or a key line goes at a port, by what the kind says is behind it: a supply gives, a load
 * takes, a contact that closes gives, a line that is pulled up takes. A DC port with nothing but conductors behind it
 * takes where it is always needed (a strip's input), and gives where another one of its box does (its outlets); power
 * may go through a switch or a meter either way.
 */
export function flowOf(kind: UnitKind, port: Port): Flow {
  // A contact in a key line gives; in a power lead it is a switch.
  const elements = kind.elements.filter(({ type }) => port.class !== 'dc' || type !== 'contactPair');
  const flows = new Set(elements.flatMap((element) => flowsAt(element, port.id)));
  if (flows.size === 1) return [...flows][0] ?? 'either';
  if (flows.size > 1 || port.class !== 'dc') return 'either';
  if (port.needed === 'always') return 'takes';
  return kind.ports.some((other) => other.class === 'dc' && other.needed === 'always') ? 'gives' : 'either';
}

function flowsAt(element: UnitElement, port: string): Flow[] {
  const isAt = (ref: string | undefined) => ref?.startsWith(`${port}.`) ?? false;
  switch (element.type) {
    case 'supply':
    case 'battery':
      return isAt(element.plus) ? ['gives'] : [];
    case 'load':
      return isAt(element.plus) ? ['takes'] : [];
    case 'converter':
      return isAt(element.plus) ? ['takes'] : isAt(element.outPlus) ? ['gives'] : [];
    case 'contactPair':
      return isAt(element.from) || isAt(element.to) ? ['gives'] : [];
    case 'pullUp':
    case 'audioLoad':
      return isAt(element.contact) ? ['takes'] : [];
    case 'audioSource':
      return isAt(element.contact) ? ['gives'] : [];
    case 'rfSource':
      return element.port === port ? ['gives'] : [];
    case 'rfLoad':
      // An antenna takes what is sent and gives what is heard.
      return element.port === port ? [element.role === 'antenna' ? 'either' : 'takes'] : [];
    case 'rfPath':
    case 'matcher':
      return element.a === port || element.b === port ? ['either'] : [];
    default:
      return [];
  }
}

/** The contact of a DC port that is plus: what its load or supply says, else the live one of its connector. */
export function plusContact(kind: UnitKind, port: Port, connector: Connector): string | undefined {
  for (const element of kind.elements) {
    const ends = 'plus' in element ? [element.plus, ...('outPlus' in element ? [element.outPlus] : [])] : [];
    const own = ends.find((ref) => ref.startsWith(`${port.id}.`));
    if (own) return own.slice(port.id.length + 1);
  }
  return connector.contacts.find((c) => c.role === 'live')?.id;
}

/** The most that the loads of a DC port draw, or that its supply gives, amperes. */
export function mostAmps(kind: UnitKind, port: string): number {
  const isHere = (ref: string) => ref.startsWith(`${port}.`);
  const amps = kind.elements.flatMap((element): number[] => {
    switch (element.type) {
      case 'supply':
      case 'battery':
        return isHere(element.plus) ? [element.amps] : [];
      case 'converter':
        if (isHere(element.outPlus)) return [element.outAmps];
        if (!isHere(element.plus)) return [];
        return [(element.outVolts * element.outAmps) / element.efficiency / Math.max(element.minV, 1)];
      case 'load': {
        if (!isHere(element.plus)) return [];
        const amounts = [element.amount, ...(element.states ?? []).map((state) => state.amount)];
        return amounts.map((amount) => ampsOf(element, amount));
      }
      default:
        return [];
    }
  });
  return Math.max(0, ...amps);
}

/** A constant power draws most at the lowest working voltage, a resistance at the highest. */
function ampsOf({ law, minV, maxV }: Extract<UnitElement, { type: 'load' }>, amount: number): number {
  if (law === 'current') return amount;
  if (law === 'power') return minV > 0 ? amount / minV : 0;
  return amount > 0 ? maxV / amount : 0;
}
