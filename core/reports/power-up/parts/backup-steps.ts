import { isOutdoor } from '../../../station/outdoors.ts';
import { cablesAt, portName, portOfRef, unitName } from '../../../station/parts.ts';
import { loadVolts, suppliesOf, unitOfPart } from '../../../trial/parts.ts';
import { isForTips, reachWords } from '../contacts.ts';
import { type Context, setupWithout } from '../context.ts';
import { type DraftStep, reading } from '../draft-step.ts';
import { voltsAt } from '../probes.ts';
import { type Setup, seenIn } from '../setup.ts';

/** Where a battery stands behind another supply: that supply's lead out, and a unit that goes on all the same. */
export function backupSteps(context: Context): DraftStep[] {
  const { station, base, fed, supplies } = context;
  const batteries = suppliesOf(base.trial.circuit).filter(({ part }) => part.sinks);
  if (batteries.length === 0) return [];
  return supplies.flatMap(({ part: supply }): DraftStep[] => {
    const unit = unitOfPart(supply);
    const cables = cablesAt(station, base.hookup, unit, portOfRef(supply.spec.plus));
    if (supply.sinks || isOutdoor(station, unit) || cables.length === 0) return [];
    const pulled = cables.map((cable) => ({
      cable: cable.id,
      end: cable.a.unit === unit ? ('a' as const) : ('b' as const),
    }));
    const without: Setup = setupWithout(context, new Set(), { pulled });
    const { reach } = seenIn(without);
    const going = fed.find(({ unit: one, load, supply: main }) => {
      const { plus, minV } = load.part.spec;
      const isIts = unitOfPart(main.part) === unit && isForTips(station, { unit: one, port: portOfRef(plus) });
      return isIts && reach !== null && loadVolts(reach, load.part) >= minV;
    });
    if (!going) return [];
    const { plus, minus, minV, maxV } = going.load.part.spec;
    const port = { unit: going.unit, port: portOfRef(plus) };
    const numbers = cables.map(({ number }) => number).join(', ');
    return reading({
      id: `unit/${unit}/backup`,
      text: `Pull ${numbers} out of ${unitName(station, unit)}, all else on: ${unitName(station, going.unit)} goes on from the battery. Volts at ${portName(station, port)}${reachWords(station, port)}. Then ${numbers} in again, with power off.`,
      where: portName(station, port),
      at: [port],
      taking: { setup: without, probe: voltsAt(`${going.unit}.${plus}`, `${going.unit}.${minus}`) },
      quantity: 'V',
      limits: { minV, maxV },
    });
  });
}
