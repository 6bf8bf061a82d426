import { formatDecimals } from '../../quantity/format.ts';
import { findCable, unitName } from '../../station/parts.ts';
import { defineRule } from '../rule.ts';

/** Cables may take this much before it is worth a word: three tenths of the power. */
const muchDb = 1.5;

export const lineLoss = defineRule({
  id: 'rf/line-loss',
  severity: 'doubt',
  title: 'Much of the power stays in the cable',
  compares: 'what the cables between transmitter and antenna lose, with what the SWR on them adds',
  why: 'What is lost warms the cable; in receive the same decibels are added to the receiver’s noise.',
  advice: 'Use a thicker or shorter cable; where the SWR makes the loss, move the tuner to the antenna.',
  source: 'the cables’ printed losses and their tolerance; 1.5 dB is common practice',
  follows: ['rf/transmit-into-nothing', 'rf/changeover-reversed', 'drawing/fits-but-should-not'],
  messages: {
    matched: '{watts W} of {transmitter}’s {from W} reaches {end}: the cables lose {loss} dB, most of it in {cable}.',
    mismatched:
      '{watts W} of {transmitter}’s {from W} reaches {end}: the cables lose {loss} dB, {added} dB of it by the SWR, most of it in {cable}.',
  },
  looksAt: {
    chain({ source, chain, touches }, { station }, report) {
      const lines = chain.steps.filter((s) => s.edge.line);
      const loss = lines.reduce((sum, s) => sum + s.lossDb, 0);
      const added = loss - lines.reduce((sum, s) => sum + s.matchedLossDb, 0);
      const antennas = chain.ends.filter((e) => e.load.spec.role === 'antenna');
      const [end] = antennas.sort((a, b) => b.watts - a.watts || a.load.unit.localeCompare(b.load.unit));
      if (!end || loss <= muchDb) return;
      const worst = lines.reduce((most, s) => (s.lossDb > most.lossDb ? s : most));
      const cable = worst.edge.origin.type === 'cable' ? worst.edge.origin.cable : '';
      report({
        message: added > 0.3 ? 'mismatched' : 'matched',
        severity: 'doubt',
        at: [{ cable }, { unit: end.load.unit }],
        values: {
          watts: end.watts,
          from: chain.sourceWatts,
          transmitter: unitName(station, source.unit),
          end: unitName(station, end.load.unit),
          loss: formatDecimals(loss, 1),
          added: formatDecimals(added, 1),
          cable: findCable(station, cable)?.number ?? cable,
        },
        weight: loss,
        touches,
      });
    },
  },
});
