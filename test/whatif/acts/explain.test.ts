import { describe, expect, it } from 'vitest';
import { shelf } from '../../../core/catalog/kinds/index.ts';
import { severities } from '../../../core/rules/finding.ts';
import { edit } from '../../../core/station/edit.ts';
import { remember } from '../../../core/station/remember.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import type { UnitKind } from '../../../core/station/schema/unit-kind.ts';
import { survey } from '../../../core/survey.ts';
import { explain } from '../../../core/whatif/acts/explain.ts';
import { isHarm } from '../../../core/whatif/acts/harm.ts';
import { listActs } from '../../../core/whatif/acts/list-acts.ts';
import { judgeActs } from '../../acts/judge-acts.ts';
import { correct, troubles } from '../../cases/index.ts';
import { drawStation } from '../../stations/draw.ts';
import { sample } from '../../stations/samples.ts';

const receiver = shelf.find((one) => one.id === 'receiver-with-mute')?.kind as UnitKind;
/** Power comes in by a phono jack, as at home-made gear. */
const withPhonoPower: UnitKind = {
  ...receiver,
  ports: receiver.ports.map((port) => (port.id === 'power' ? { ...port, connector: 'phono-jack' } : port)),
};

/** A station with the one act done to it that is called so. */
function drawnWrong(station: Station, words: string): Station {
  const act = listActs(station).find((a) => a.words === words);
  if (!act)
    throw new Error(
      `no act “${words}”; there are ${listActs(station)
        .map((a) => a.words)
        .join(', ')}`,
    );
  return edit(station, act.change);
}

/** Worked out once: a station is looked at in several ways. */
const found = remember((station: Station) => explain(survey(station)).findings);

describe('what a hand did stands on top of all that follows from it, and its fix ends it', () => {
  it.each([
    ['hut', 'R3 and K4 exchanged at Receiver', /R3 belongs into Receiver · antenna/],
    ['two-metre-mast', 'R6 and R10 exchanged: R6 in Receiving arrestor · antenna, R10 in Dummy load', /R10/],
    ['hill-table', 'A1 and A2 exchanged at Sound interface', /A1.*A2/],
  ])('%s: %s', (name, words, says) => {
    const wrong = drawnWrong(sample(name), words);
    const [first, ...others] = found(wrong);
    expect(first?.message).toMatch(says);
    const change = first?.fix?.change;
    expect(change && found(edit(wrong, change)).filter(isHarm)).toEqual([]);
    for (const other of others.filter(isHarm)) expect(other.causedBy).toBe(first?.id);
  });

  it('a power plug in an antenna jack of the same sort is named, and what the lead lies on is not', () => {
    const station = drawStation({
      units: { supply: 'bench-supply', receiver: { made: withPhonoPower }, antenna: 'dipole' },
      cables: [
        ['supply.out > receiver.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
        'antenna.feed > receiver.antenna',
      ],
    });
    const [lead, coax] = station.cables;
    const act = listActs(station).find((a) => a.kind === 'exchanged' && a.cables.includes(lead?.id ?? ''));
    const wrong = edit(station, act?.change ?? { type: 'moveUnits', moves: [] });
    expect(survey(wrong).findings.filter((f) => f.rule === 'rf/dc-on-rf').length).toBeGreaterThan(0);
    const [first] = found(wrong);
    expect(first).toMatchObject({ rule: 'act/exchanged', severity: 'danger' });
    expect(first?.message).toBe(
      `${lead?.number} and ${coax?.number} are in each other’s place: ${lead?.number} belongs into receiver · power, ${coax?.number} into receiver · antenna.`,
    );
  });

  it('the lead from the supply to the strip, crossed, is named once, and no lead behind it', () => {
    const wrong = drawnWrong(sample('hut'), 'The two cores of D1 crossed at Bench supply · output');
    const roots = found(wrong).filter((f) => isHarm(f) && f.causedBy === undefined);
    expect(roots.map((f) => f.message)).toEqual(['The two cores of D1 are crossed.']);
    expect(roots[0]?.severity).toBe('danger');
  });
});

describe('where an act is told', () => {
  it('it is as grave as the worst under it, and dangers stand before faults', () => {
    for (const { wrong } of troubles) {
      const findings = found(wrong);
      for (const act of findings.filter((f) => f.rule.startsWith('act/'))) {
        const under = findings.filter((f) => f.causedBy === act.id).map((f) => severities.indexOf(f.severity));
        expect(severities.indexOf(act.severity)).toBe(Math.min(...under));
      }
      const roots = findings.filter((f) => f.causedBy === undefined).map((f) => severities.indexOf(f.severity));
      expect(roots).toEqual([...roots].sort((a, b) => a - b));
    }
  });

  it('nothing that was found is lost, and all under something that is there', () => {
    for (const { wrong } of troubles) {
      const plain = survey(wrong).findings;
      const findings = found(wrong);
      expect(
        findings
          .filter((f) => !f.rule.startsWith('act/'))
          .map((f) => f.id)
          .sort(),
      ).toEqual(plain.map((f) => f.id).sort());
      const ids = new Set(findings.map((f) => f.id));
      expect(findings.filter((f) => f.causedBy !== undefined && !ids.has(f.causedBy))).toEqual([]);
    }
  });

  it('the rule that a case wants stands for itself, or first under the act', () => {
    for (const { id, wrong, finds, whenFails } of troubles) {
      if (whenFails !== undefined) continue;
      const findings = found(wrong);
      for (const { rule } of finds) {
        const one = findings.find((f) => f.rule === rule);
        const root = findings.find((f) => f.id === one?.causedBy);
        if (!root?.rule.startsWith('act/')) continue;
        const under = findings.filter((f) => f.causedBy === root.id && f.severity === one?.severity);
        expect([id, under.map((f) => f.rule)]).toEqual([id, expect.arrayContaining([rule])]);
      }
    }
  });

  it('not on a station that is right', () => {
    for (const station of [...troubles.map((t) => t.right), ...correct.map((c) => c.station)]) {
      expect(found(station).filter((f) => f.rule.startsWith('act/'))).toEqual([]);
    }
  });

  it('not as a way round a box: a cut-off that a braid goes round stays in the line', () => {
    const wrong = troubles.find(({ id }) => id === 'D34')?.wrong as Station;
    const findings = found(wrong);
    expect(findings.map((f) => f.rule)).toContain('power/switch-bypassed');
    expect(findings.filter((f) => f.rule.startsWith('act/')).map((f) => f.message)).toEqual([]);
  });

  it('not where a supply is too small: no plug is in the wrong place', () => {
    const small = drawStation({
      units: { supply: 'bench-supply', radio: 'transceiver-100w', load: 'dummy-load-100w', key: 'paddle' },
      cables: [
        ['supply.out > radio.power', { kind: 'lead-awg-10', fuse: { amps: 25, family: 'blade', atM: 0.1 } }],
        'radio.antenna > load.input',
        'key.out > radio.key',
      ],
    });
    const findings = found(small);
    expect(findings.map((f) => f.rule)).toContain('power/supply-overloaded');
    expect(findings.filter((f) => f.rule.startsWith('act/'))).toEqual([]);
  });
});

describe('of what a hand could do wrong', () => {
  it.each(['hut', 'hill-table'])('to %s, each first finding names the leads that were moved', (name) => {
    const verdicts = [...judgeActs(sample(name), 2)];
    const missed = verdicts.filter((v) => !v.named || !v.fixed);
    // The share that is promised.
    expect(missed.length, missed.map((v) => `${v.act.words}: ${v.said}`).join('\n')).toBeLessThanOrEqual(
      0.05 * verdicts.length,
    );
    expect(verdicts.length).toBeGreaterThan(9);
  });
});
