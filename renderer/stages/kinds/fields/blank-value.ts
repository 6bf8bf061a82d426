import type { ElementField } from '../../../../core/index.ts';

const usual: Record<string, unknown> = {
  maxVolts: 14,
  maxDbm: 40,
  minDbm: 30,
  peukert: 1.2,
  emission: 1,
  swr: 2,
  minHz: 1_800_000,
  maxHz: 30_000_000,
  fromHz: 30_000_000,
  hz: 14_000_000,
  db: 40,
  dcOhms: 0.1,
  ohms: 50,
  fuseAmps: 5,
  fuseBreakingAmps: 1000,
  chargeAmps: 1,
  harmonicsDbc: -50,
  maxWatts: 100,
  watts: 100,
  amount: 0,
};

/** What a field holds when it is added to an element: something to begin with that the schema allows. */
export function blankValue(field: ElementField): unknown {
  const given = usual[field.name];
  if (given !== undefined) return given;
  switch (field.holds) {
    case 'number':
      return Math.min(field.limit.most, Math.max(field.limit.least, 0));
    case 'choice':
      return field.options[0];
    case 'flag':
      return true;
    case 'condition':
      return {};
    case 'object':
    case 'rows': {
      const row = Object.fromEntries(field.fields.filter((f) => !f.optional).map((f) => [f.name, blankValue(f)]));
      return field.holds === 'rows' ? [row] : row;
    }
    default:
      return field.holds === 'contact' ? 'chassis' : '';
  }
}
