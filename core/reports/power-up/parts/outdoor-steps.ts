import { wiringOf } from '../../../catalog/cables/wiring-of.ts';
import { isOutdoor } from '../../../station/outdoors.ts';
import { portName, unitName } from '../../../station/parts.ts';
import { unitOfPart } from '../../../trial/parts.ts';
import { contactName } from '../contacts.ts';
import { type Context, type FedUnit, setupWithout } from '../context.ts';
import { type DraftStep, reading } from '../draft-step.ts';
import { otherEnd } from '../joints.ts';
import { drawFigure } from '../own-figures.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { chargeRange } from '../tolerance.ts';

/** A unit outdoors is read indoors, where its lead comes in; out there everything stays plugged in. */
export function outdoorSteps(context: Context, fed: FedUnit, waiting: ReadonlySet<string>): DraftStep[] {
  const { station } = context;
  const { unit, load, cable, supply } = fed;
  const indoors = otherEnd(fed.end);
  const { plus, minus, minV, maxV } = load.part.spec;
  const [name, setup, from] = [unitName(station, unit), setupWithout(context, waiting), unitOfPart(supply.part)];
  const socket = cable[indoors];
  const isIn = !isOutdoor(station, socket.unit);
  const place = isIn ? ` at ${portName(station, socket)}` : '';
  // A core's contact at the unit, and the one that it meets indoors.
  const contact = (ref: string) => {
    const row = wiringOf(station, cable).find((one) => `${cable[fed.end].port}.${one[fed.end]}` === ref);
    return row && `${socket.unit}.${socket.port}.${row[indoors]}`;
  };
  const [live, back] = [contact(plus), contact(minus)];
  const open = setupWithout(context, waiting, { pulled: [{ cable: cable.id, end: indoors }] });
  return [
    ...(isIn && live && back
      ? reading({
          id: `unit/${unit}/volts`,
          text: `Volts that are to go out to ${name}, at ${portName(station, socket)} before ${cable.number} goes in: ${contactName(station, live)} against ${contactName(station, back)}.`,
          where: portName(station, socket),
          at: [{ cable: cable.id, end: indoors }],
          taking: { setup: open, probe: voltsAt(live, back) },
          quantity: 'V',
          limits: { minV, maxV },
        })
      : []),
    ...reading({
      id: `unit/${unit}/amps`,
      text: `Plug in ${cable.number}${place}; ${name} on: amperes out of ${unitName(station, from)}.`,
      where: unitName(station, from),
      at: [{ unit: from }],
      taking: { setup, probe: ampsOf(from, supply.part.spec.id) },
      quantity: 'A',
      range: chargeRange(setup, ampsOf(from, supply.part.spec.id)),
      figure: drawFigure(station, setup, { unit, supply: supply.part }, `${name}’s draw in receive`),
    }),
  ];
}
