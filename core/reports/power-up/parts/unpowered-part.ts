import type { Resistor } from '../../../circuit/circuit.ts';
import { isOutdoor } from '../../../station/outdoors.ts';
import { cablesAt, cablesIn, classOf, kindOf, portName, portOfRef, unitName } from '../../../station/parts.ts';
import { fusesOf, unitOfPart } from '../../../trial/parts.ts';
import { fusePlace, fuseSeat } from '../../../trial/power/fuse-place.ts';
import { isReadyMade } from '../../make/is-ready-made.ts';
import { type Context, setupWithout } from '../context.ts';
import { type DraftPart, type DraftStep, doing, reading } from '../draft-step.ts';
import { plugContacts } from '../joints.ts';
import { ohmsBetween } from '../probes.ts';
import { circuitOf, type Probe, type Setup } from '../setup.ts';
import { feederSteps } from './feeder-steps.ts';
import { insulationOhms, leadSteps } from './lead-steps.ts';
import { restSteps } from './rest-steps.ts';
import { switchWords } from './switch-words.ts';

/** Look and feel with every supply off: leads, empty fuse holders, the rail, feeders, lines at rest. */
export function unpoweredPart(context: Context): DraftPart {
  const setup = setupWithout(context, new Set(), { powered: false });
  const bench = onBench(setup);
  return {
    id: 'unpowered',
    title: 'Unpowered',
    before: `All supplies off, mains plugs pulled, batteries unplugged${panelWords(context)}. Touch the meter’s leads together first and take off what they show.`,
    steps: [
      doing({ id: 'look', text: 'Look at every plug and solder joint, and tug at every lead.' }),
      ...earthStep(context),
      ...switchStep(context),
      ...context.station.cables.flatMap((cable) => leadSteps(context.station, bench, cable)),
      ...shellStep(context),
      ...holderSteps(context, setup),
      ...feederSteps(context),
      ...restSteps(context),
      ...railSteps(context),
    ],
  };
}

/** Earth wires carry what goes wrong with all that follows. */
function earthStep({ station, base }: Context): DraftStep[] {
  const wires = cablesIn(station, base.hookup).filter((cable) => classOf(station, cable) === 'earth');
  const numbers = wires.map(({ number }) => number).join(', ');
  const at = wires.map(({ id }) => ({ cable: id }));
  return wires.length > 0 ? [doing({ id: 'earth', text: `Earth wires on first, and off last: ${numbers}.`, at })] : [];
}

function switchStep({ station, base }: Context): DraftStep[] {
  // A vehicle’s engine is no switch to set before its leads are on.
  const units = station.units.filter(
    (unit) => !kindOf(station, unit).elements.some((e) => e.type === 'supply' || e.type === 'battery'),
  );
  const words = switchWords({ ...station, units }, base.hookup);
  return words.length > 0 ? [doing({ id: 'switches', text: `Set every switch: ${words.join('; ')}.` })] : [];
}

/** Home-made plugs with small contacts. */
function shellStep({ station, base }: Context): DraftStep[] {
  const cables = cablesIn(station, base.hookup).filter(
    (cable) =>
      ['control', 'audio'].includes(classOf(station, cable)) &&
      cable.status !== 'tested' &&
      !isReadyMade(station, cable),
  );
  const text = `Home-made plugs of ${cables.map(({ number }) => number).join(', ')}, unplugged: each contact to the plug’s shell, and to its neighbours, as the wiring says and no more.`;
  return cables.length > 0 ? [doing({ id: 'shells', text, at: cables.map(({ id }) => ({ cable: id })) })] : [];
}

/** What stands outdoors gives power whenever there is light or wind: it has no switch. */
function panelWords({ station, supplies }: Context): string {
  const outdoors = [...new Set(supplies.map(({ part }) => unitOfPart(part)))].filter((unit) =>
    isOutdoor(station, unit),
  );
  return outdoors.map((unit) => `, ${unitName(station, unit)} covered and unplugged`).join('');
}

/** Every cable there is, whatever hook-up it is for. */
function onBench(setup: Setup): Setup {
  const cables = setup.station.cables.map(({ hookups: _, ...cable }) => cable);
  return { ...setup, station: { ...setup.station, cables } };
}

/** A holder that conducts without its fuse guards nothing; one reading for each fuse in use. */
function holderSteps({ station, base }: Context, setup: Setup): DraftStep[] {
  return fusesOf(base.trial.circuit).flatMap(({ index, part }) => {
    const place = fusePlace(station, part);
    const isUsed = 'cable' in place || cablesAt(station, base.hookup, place.unit, place.port).length > 0;
    if (!isUsed) return [];
    const [a, b] = [part.a, part.b].map((node) => base.trial.circuit.nodes[node] ?? '') as [string, string];
    const probe: Probe = (seen) => ohmsBetween(a, b)({ ...seen, open: new Set([...seen.open, index]) });
    return reading({
      id: `holder/${seatId(part)}`,
      text: `Pull the ${part.fuse.ratedAmps} A fuse, and see that it says so: across its empty holder. Then put it back.`,
      where: fuseSeat(station, part),
      at: [place],
      taking: { setup, probe },
      quantity: 'ohm',
      openFrom: insulationOhms,
    });
  });
}

const seatId = ({ origin }: Resistor): string =>
  origin.type === 'element' ? `${origin.unit}.${origin.element}` : 'cable' in origin ? origin.cable : '';

/** Plus to minus of all that hangs on each supply, at the plug that is out of it. */
function railSteps(context: Context): DraftStep[] {
  const { station, base, supplies } = context;
  return supplies.flatMap(({ part }) => {
    const unit = unitOfPart(part);
    // An ohmmeter across a battery or a panel in light reads nonsense, or is lost.
    const others = [...new Set(supplies.map((s) => unitOfPart(s.part)))].filter((other) => other !== unit);
    const othersOut =
      others.length > 0 ? ` and every lead of ${others.map((other) => unitName(station, other)).join(', ')}` : '';
    const cable = cablesAt(station, base.hookup, unit, portOfRef(part.spec.plus))[0];
    if (!cable) return [];
    const end = cable.a.unit === unit ? 'a' : 'b';
    const setup = setupWithout(context, new Set(), { powered: false, pulled: [{ cable: cable.id, end }] });
    const plug = plugContacts(
      circuitOf(setup),
      { cable: cable.id, end },
      `${unit}.${part.spec.plus}`,
      `${unit}.${part.spec.minus}`,
    );
    if (!plug) return [];
    return reading({
      id: `rail/${unit}.${part.spec.id}`,
      text: `All plugged in except ${cable.number} at ${unitName(station, unit)}${othersOut}: plus to minus at the plug of ${cable.number}. It may rise while capacitors charge; it must not be a short.`,
      where: portName(station, cable[end]),
      at: [{ cable: cable.id, end }],
      taking: { setup, probe: ohmsBetween(...plug) },
      quantity: 'ohm',
      shorts: 'As drawn this is a short. Do not switch on; put the drawing right first.',
    });
  });
}
