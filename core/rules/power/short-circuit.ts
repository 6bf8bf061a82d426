import { unitName } from '../../station/parts.ts';
import { instantsOfPart } from '../../trial/instants.ts';
import { conductorsOf } from '../../trial/metal/conductors.ts';
import { leastWay } from '../../trial/metal/least-way.ts';
import { nameOfOrigin, touchOf } from '../../trial/names.ts';
import { unitOfPart } from '../../trial/parts.ts';
import { openedAt } from '../../trial/power/opened-at.ts';
import { defineRule } from '../rule.ts';

/** A way from plus to minus through metal of less than this is a short: the thinnest load of a station is far above. */
const shortOhms = 1;

export const shortCircuit = defineRule({
  id: 'power/short-circuit',
  severity: 'danger',
  title: 'Plus and minus are joined',
  compares: 'the way from a supply’s plus to its minus through conductors only',
  why: 'All that the supply or battery can give flows through the thinnest thing on the way, which gets hot enough to burn.',
  advice: 'Follow the way named here and take out the join that does not belong.',
  source: 'common practice: under one ohm of metal between plus and minus is no load',
  follows: ['power/reversed-polarity', 'drawing/fits-but-should-not'],
  messages: {
    shorted: '{supply} is shorted: plus reaches minus through {way}, {ohms Ω} in all, and {amps A} flows.',
    off: '{supply} is shorted: plus reaches minus through {way}, {ohms Ω} in all, and it switches off.',
  },
  looksAt: {
    supply({ index, part }, { station, trial }, report) {
      const first = { name: 'receive', reach: trial.atFirst } as const;
      for (const { name, reach } of [first, ...instantsOfPart(trial, index).slice(1)]) {
        // Only a supply that is pressed hard can be shorted; looking for a way in every moment of every station costs.
        const amps = reach.dc.ampsIn(index);
        const mode = reach.dc.modeOf(index);
        if (mode === 'regulating' && amps <= part.spec.amps && part.spec.amps !== 0) continue;
        // At first every fuse is whole.
        const isOpen = (i: number) => name !== 'receive' && openedAt(trial, i) !== undefined;
        const conductors = conductorsOf(trial.circuit, reach.on, (_, i) => isOpen(i));
        const way = leastWay(trial.circuit, conductors, part.plus, part.minus);
        if (!way || way.ohms > shortOhms) continue;
        const origins = way.parts.map((i) => trial.circuit.parts[i]?.origin).filter((o) => o !== undefined);
        const names = [...new Set(origins.map((o) => nameOfOrigin(station, o)))];
        const unit = unitOfPart(part);
        const units = origins.flatMap((o) => ('unit' in o && o.type !== 'element' ? [`unit:${o.unit}`] : []));
        report({
          message: mode === 'off' ? 'off' : 'shorted',
          severity: 'danger',
          at: [{ unit }],
          values: { supply: unitName(station, unit), way: names.join(', '), ohms: way.ohms, amps },
          moment: name,
          weight: amps,
          touches: [...origins.map(touchOf), ...units, `supply:${unit}`],
        });
      }
    },
  },
});
