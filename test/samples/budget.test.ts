import { describe, expect, it } from 'vitest';
import { survey } from '../../core/survey.ts';
import { loadsOf, suppliesOf, unitOfPart } from '../../core/trial/parts.ts';
import { busiest } from '../../core/trial/power/battery-life.ts';
import { sample, sampleNames, sampleReport } from '../stations/samples.ts';

describe.each(sampleNames)('the budget of %s', (name) => {
  const station = sample(name);
  const { budget, overlays } = sampleReport(name);
  const { hookups } = survey(station);

  it('has the volts and amperes that the survey found at every load and supply', () => {
    for (const { hookup, trial } of hookups) {
      const sending = busiest(trial);
      for (const { index, part } of [...loadsOf(trial.circuit), ...suppliesOf(trial.circuit)]) {
        const rows = part.kind === 'load' ? budget.loads : budget.supplies;
        const row = rows.find(
          (r) => r.hookup === hookup.id && r.unit === unitOfPart(part) && r.element === part.spec.id,
        );
        expect(row?.receiveAmps).toBe(trial.receive.dc.ampsIn(index));
        expect(row?.sendingAmps).toBe(sending.dc.ampsIn(index));
        expect(row?.receiveVolts).toBe(trial.receive.dc.between(part.plus, part.minus) ?? 0);
        expect(row?.sendingVolts).toBe(sending.dc.between(part.plus, part.minus) ?? 0);
      }
    }
  });
  it('says of a supply what the drawing shows of it', () => {
    for (const overlay of overlays) {
      if (overlay.moment !== 'receive') continue;
      for (const row of budget.supplies.filter((s) => s.hookup === overlay.hookup)) {
        const shown = overlay.units[row.unit];
        const all = budget.supplies.filter((s) => s.hookup === overlay.hookup && s.unit === row.unit);
        const amps = all.reduce((sum, s) => sum + s.receiveAmps, 0);
        if (shown?.supplyAmps !== undefined) expect(amps).toBeCloseTo(shown.supplyAmps, 9);
        if (shown?.supplyVolts !== undefined) expect(all[0]?.receiveVolts).toBeCloseTo(shown.supplyVolts, 9);
      }
    }
  });
});
