import type { Trial } from '../../../keydown/key-down.ts';
import { formatVolts } from '../../../quantity/format.ts';
import { isOutdoor } from '../../../station/outdoors.ts';
import { cablesIn, portName, portOf, portOfRef, unitName } from '../../../station/parts.ts';
import type { Cable, CableEnd } from '../../../station/schema/schema.ts';
import { unitOfPart } from '../../../trial/parts.ts';
import { contactName, nodeOfRole } from '../contacts.ts';
import { type Context, type FedUnit, setupWithout } from '../context.ts';
import { type DraftPart, type DraftStep, reading } from '../draft-step.ts';
import { ampsOf, voltsAt } from '../probes.ts';
import { type Probe, type Setup, trialOf } from '../setup.ts';
import { rangeOf } from '../tolerance.ts';

/** A control that can be pressed: `unit.actor`, and what people call it. */
interface Control {
  readonly key: string;
  readonly name: string;
  /** It is part of the transmitter: a microphone’s key. */
  readonly isInside: boolean;
}

/** Each control of a trial alone: keys first, which make a carrier that a meter shows, and a radio’s own microphone last. */
export function controlsOf({ station }: Context, { circuit, keyDowns }: Trial): Control[] {
  const controls = keyDowns.flatMap(({ controls: [only, ...more] }) => {
    const actor = circuit.actors[only ?? -1];
    if (!actor || more.length > 0) return [];
    // A key is its own name; a radio has a key, a microphone and a switch.
    const isOneOfMany = actor.power !== null;
    const name = unitName(station, actor.unit);
    const isInside = circuit.rf.sources.some(({ unit }) => unit === actor.unit);
    // PTT stays as it is.
    const label = actor.label.replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase());
    const inside = `the ${label} of ${name}`;
    return [{ key: actor.key, name: isInside ? inside : isOneOfMany ? `${name} (${actor.label})` : name, isInside }];
  });
  return controls.sort((a, b) => Number(a.isInside) - Number(b.isInside));
}

const sendersIn = ({ base }: Context): ReadonlySet<string> => new Set(base.trial.circuit.rf.sources.map((s) => s.unit));

/**
 * The transmitters whose power lead is out while the lines are read. A lead that also feeds something else takes that
 * along; a transmitter with no lead of its own waits for the load.
 */
export const pulledForLines = (context: Context): FedUnit[] =>
  context.fed.filter(({ unit }) => sendersIn(context).has(unit));

/** Mute and changeover while no transmitter can send: the volts on every line at rest, and pressed. */
export function linesPart(context: Context): DraftPart {
  const pulled = pulledForLines(context);
  const rest = setupWithout(context, new Set(), { pulled: pulled.map(({ cable, end }) => ({ cable: cable.id, end })) });
  const senders = sendersIn(context);
  const canSend = [...senders].some((unit) => !pulled.some((fed) => fed.unit === unit));
  const controls = canSend ? [] : controlsOf(context, trialOf(rest));
  const steps = lineSteps(context, rest, controls, new Set());
  const names = pulled.map(({ cable }) => cable.number).join(', ');
  return {
    id: 'lines',
    title: 'Mute and changeover',
    before: `${names ? `Power off, pull ${names}, so that nothing can send, power on. ` : ''}Press each control. A line is reached with the sleeve of its plug screwed back, or by a Y lead.`,
    steps: controls.length > 0 ? steps : [],
  };
}

/** Volts on the lines that a press changes, each once, and what the supplies give then. */
export function lineSteps(
  context: Context,
  rest: Setup,
  controls: readonly Control[],
  told: Set<string>,
  part = 'lines',
): DraftStep[] {
  const { station } = context;
  return controls.flatMap((control): DraftStep[] => {
    const pressed: Setup = { ...rest, control: control.key };
    const lines = cablesIn(station, rest.hookup).flatMap((cable): DraftStep[] => {
      const probe = lineProbe(context, cable);
      if (!probe || told.has(cable.id)) return [];
      const { end, volts, tips } = probe;
      const where = portName(station, cable[end]);
      const shared = { where, at: [{ cable: cable.id, end }], quantity: 'V' } as const;
      const [before] = reading({
        ...shared,
        id: `${part}/${cable.id}/rest`,
        text: `Volts on line ${cable.number} at rest, ${tips}.`,
        taking: { setup: rest, probe: volts },
      });
      const [after] = reading({
        ...shared,
        id: `${part}/${cable.id}/pressed`,
        text: `Volts on line ${cable.number} while ${control.name} is pressed, ${tips}.`,
        taking: { setup: pressed, probe: volts },
        range: (value) => downRange(pressed, volts, value),
      });
      if (!before || !after || !changes(before, after)) return [];
      told.add(cable.id);
      return [withTouch(before, feederName(context, cable)), after];
    });
    // Sending has readings of its own.
    return lines.length === 0 || part !== 'lines' ? lines : [...lines, ...supplyAmps(context, pressed, control)];
  });
}

/** From here on a DC voltage hurts whoever touches it: IEC 62368-1, the limit of its lowest class. */
const touchVolts = 60;

function withTouch(step: DraftStep, unit: string): DraftStep {
  const volts = Math.abs(step.expected?.value ?? 0);
  if (volts <= touchVolts) return step;
  const text = `${step.text} ${formatVolts(volts)} stands on it. ${unit} off and its mains plug out: sleeve back, insulated clips on; then on, read this and the next line, off again before the clips come off. Touch nothing of it meanwhile.`;
  return { ...step, text };
}

/** What a transistor or an optocoupler leaves on a line that it holds: 0.4 V, as TTL outputs may. */
const downVolts = 0.4;

function downRange(pressed: Setup, probe: Probe, value: number) {
  if (Math.abs(value) < downVolts) return { from: -downVolts, to: downVolts };
  return rangeOf(pressed, probe, 'V');
}

/** The unit that puts the volts on a line. */
function feederName({ station, base }: Context, { a, b }: Cable): string {
  const isAt = (contact: string, of: string) =>
    [a, b].some(({ unit, port }) => of === unit && portOfRef(contact) === port);
  const pullUp = base.trial.circuit.parts.find((p) => p.kind === 'pullUp' && isAt(p.spec.contact, unitOfPart(p)));
  return pullUp ? unitName(station, unitOfPart(pullUp)) : 'All';
}

const changes = (before: DraftStep, after: DraftStep): boolean =>
  Math.abs((before.expected?.value ?? 0) - (after.expected?.value ?? 0)) > 0.2;

interface LineProbe {
  readonly end: CableEnd;
  readonly volts: Probe;
  /** Where the meter's tips go. */
  readonly tips: string;
}

function lineProbe({ station }: Context, cable: Cable): LineProbe | null {
  // Nobody reads anything outdoors while a control is pressed.
  const ends = (['b', 'a'] as const).filter((end) => !isOutdoor(station, cable[end].unit));
  for (const end of ends) {
    if (portOf(station, cable[end]).port.class !== 'control') continue;
    const [live, back] = [nodeOfRole(station, cable[end], 'live'), nodeOfRole(station, cable[end], 'return')];
    const tips = `${contactName(station, live)} against ${contactName(station, back)}`;
    return { end, volts: voltsAt(live, back), tips };
  }
  return null;
}

/** What each supply gives while a control is pressed; those that do not feel it are left out. */
function supplyAmps(context: Context, pressed: Setup, control: Control): DraftStep[] {
  const rest = trialOf({ ...pressed, control: null }).receive;
  return context.supplies.flatMap(({ part: supply, index }): DraftStep[] => {
    const unit = unitOfPart(supply);
    const [step] = reading({
      id: `lines/${control.key}/${unit}.${supply.spec.id}/amps`,
      text: `Amperes out of ${unitName(context.station, unit)} while ${control.name} is pressed.`,
      where: unitName(context.station, unit),
      at: [{ unit }],
      taking: { setup: pressed, probe: ampsOf(unit, supply.spec.id) },
      quantity: 'A',
    });
    const before = rest.dc.ampsIn(index);
    return step && Math.abs((step.expected?.value ?? 0) - before) > 1e-4 ? [step] : [];
  });
}
