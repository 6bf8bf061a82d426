import type { Port, PortClass, UnitElement, UnitKind } from '../../core/station/schema/unit-kind.ts';

type PortDrawing = [portClass: PortClass, connector: string, set?: Partial<Port>];

/** A unit kind made up for a test: ports by id, what is inside, and what else it needs. */
export const made = (
  ports: Record<string, PortDrawing>,
  elements: UnitElement[],
  rest: Partial<UnitKind> = {},
): UnitKind => ({
  name: 'Made up',
  group: 'rf',
  summary: 'Made up for a test',
  ports: Object.entries(ports).map(([id, [portClass, connector, set]]) => ({
    id,
    label: id,
    class: portClass,
    connector,
    side: 'left',
    needed: 'optional',
    ...set,
  })),
  elements,
  source: 'made up for a test',
  ...rest,
});

/** A load of a constant current that works from 11 to 15 V and stands 16 V. */
export const load = (plus: string, minus: string, amount: number): Extract<UnitElement, { type: 'load' }> => ({
  id: 'draw',
  type: 'load',
  plus,
  minus,
  law: 'current',
  amount,
  minV: 11,
  maxV: 15,
  absMaxV: 16,
  reverseProtected: false,
});
