import { describe, expect, it } from 'vitest';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { figureName, figureText } from '../../core/reports/changes/figure-words.ts';
import { elementFigures } from '../../core/station/element-figures.ts';

const kindOf = (id: string) => {
  const found = shelf.find((one) => one.id === id);
  if (!found) throw new Error(`no ${id} on the shelf`);
  return found.kind;
};

describe('a figure is called the same where it is typed and where its change is told', () => {
  it.each(shelf.map(({ kind }) => [kind.name, kind] as const))('%s', (_, kind) => {
    for (const element of kind.elements) {
      for (const { key, label } of elementFigures(kind, element)) {
        expect(figureName(kind, key).label.toLowerCase()).toContain(label.toLowerCase());
        expect(figureText(kind, key)).not.toBe('none');
      }
    }
  });
});

describe('a figure with its unit', () => {
  const source = kindOf('transceiver-100w').elements.find((e) => e.type === 'rfSource');
  it('beside the carrier', () =>
    expect(figureText(kindOf('transceiver-100w'), `${source?.id}.harmonicsDbc`)).toMatch(/ dBc$/));
  it('none of a name that nothing has', () => expect(figureText(kindOf('transceiver-100w'), 'no.such')).toBe('none'));
});
