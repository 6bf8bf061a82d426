import { cablesAt, portName, portOfRef } from '../../../station/parts.ts';
import type { Cable } from '../../../station/schema/schema.ts';
import { suppliesOf, unitOfPart } from '../../../trial/parts.ts';
import { contactName, isForTips } from '../contacts.ts';
import type { Context } from '../context.ts';
import { type DraftStep, reading } from '../draft-step.ts';
import { voltsAt } from '../probes.ts';
import { type Setup, seenIn } from '../setup.ts';

/** Of a converter: what comes out, before anything is plugged in there. */
export function outputSteps(context: Context, setup: Setup, unit: string): DraftStep[] {
  const { station, base } = context;
  const { circuit } = seenIn(setup);
  const outputs = suppliesOf(circuit).filter(({ part }) => part.converter && unitOfPart(part) === unit);
  return outputs.flatMap(({ part: { spec } }): DraftStep[] => {
    const port = { unit, port: portOfRef(spec.plus) };
    const hasBattery = cablesAt(station, base.hookup, unit, port.port).some((cable) => leadsToBattery(context, cable));
    // A charge controller without its battery, and the panel on it, may burn.
    if (!isForTips(station, port) || hasBattery) return [];
    const pulled = cablesAt(station, base.hookup, unit, port.port).map((cable) => ({
      cable: cable.id,
      end: cable.a.unit === unit && cable.a.port === port.port ? ('a' as const) : ('b' as const),
    }));
    const [red, black] = [contactName(station, `${unit}.${spec.plus}`), contactName(station, `${unit}.${spec.minus}`)];
    return reading({
      id: `unit/${unit}/${spec.id}/out`,
      text: `Volts at ${portName(station, port)} with nothing in it: red tip on its ${red}, black on its ${black}.`,
      where: portName(station, port),
      at: [port],
      taking: {
        setup: { ...setup, pulled: [...setup.pulled, ...pulled] },
        probe: voltsAt(`${unit}.${spec.plus}`, `${unit}.${spec.minus}`),
      },
      quantity: 'V',
    });
  });
}

export function leadsToBattery({ base }: Context, { a, b }: Cable): boolean {
  const batteries = suppliesOf(base.trial.circuit).filter(({ part }) => part.sinks);
  return batteries.some(({ part }) => [a.unit, b.unit].includes(unitOfPart(part)));
}
