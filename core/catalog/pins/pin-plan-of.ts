import type { Connector } from '../../station/schema/connector.ts';
import { flatPlans } from './flat-plans.ts';
import type { PinPlan } from './pin-plan.ts';
import { roundPlans } from './round-plans.ts';

const plans: Readonly<Record<string, PinPlan>> = { ...roundPlans, ...flatPlans };

/**
 * How the contacts of a connector lie, seen while soldering: a plug as its standard has it, a socket mirrored. Where
 * no plan is known for its contacts they stand in rows of five in their own order.
 */
export function pinPlanOf(connector: Connector): PinPlan {
  const plan = plans[connector.family];
  const isWhole =
    plan?.pins.length === connector.contacts.length &&
    connector.contacts.every(({ id }) => plan.pins.some((pin) => pin.id === id));
  if (!plan || !isWhole) return inRows(connector);
  return connector.gender === 'jack' ? mirrored(plan) : plan;
}

const mirrored = (plan: PinPlan): PinPlan => ({ ...plan, pins: plan.pins.map((pin) => ({ ...pin, x: -pin.x })) });

const inOneRow = 5;
const stepMm = 3;

function inRows({ contacts }: Connector): PinPlan {
  const columns = Math.min(inOneRow, contacts.length);
  const rows = Math.ceil(contacts.length / inOneRow);
  return {
    outline: 'box',
    widthMm: columns * stepMm + 1,
    heightMm: rows * stepMm + 1,
    key: null,
    pins: contacts.map(({ id }, i) => ({
      id,
      x: ((i % inOneRow) - (columns - 1) / 2) * stepMm,
      y: (Math.floor(i / inOneRow) - (rows - 1) / 2) * stepMm,
    })),
    view: 'in their order; how they lie is not known',
    source: 'no plan: go by the numbers on the plug',
  };
}
