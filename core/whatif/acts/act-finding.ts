import { type Finding, worstOf } from '../../rules/finding.ts';
import { findCable, portName } from '../../station/parts.ts';
import type { Place } from '../../station/place.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';
import type { Act, ActKind } from './act.ts';
import type { Cause } from './find-causes.ts';

const titles: Readonly<Record<ActKind, string>> = {
  moved: 'A plug is in the wrong jack',
  exchanged: 'Two plugs are exchanged',
  turned: 'A lead lies the wrong way round',
  crossed: 'The cores of a lead are crossed',
  mistaken: 'Two leads are taken for each other',
  switched: 'A switch is in the wrong position',
};

const why = 'It is one thing that a hand did, or a pen: all that is listed under it is gone once it is put right.';

/** What a hand did wrong, as a finding: as grave as the worst that follows from it; its fix puts it right. */
export function actFinding(station: Station, { acts, explains }: Cause): Finding {
  const [first, ...others] = acts;
  const isClear = others.length === 0;
  const sentences = acts.map((act) => wrongWords(station, act));
  return {
    id: `act/${first.kind}:${first.kind}@${first.id}`,
    rule: `act/${first.kind}`,
    severity: worstOf(explains),
    title: isClear ? titles[first.kind] : 'One of these is plugged wrong',
    message: isClear ? `${capital(sentences[0] ?? '')}.` : `Either ${sentences.join(', or ')}.`,
    why: isClear ? why : `${why} Which of them it is can’t be told from the drawing: each would explain the same.`,
    advice: isClear
      ? 'Put it right as the fix says, or look whether the drawing shows what was meant.'
      : 'Look which one it is, and put that right.',
    at: acts.flatMap((act): Place[] => [...act.at]),
    values: {},
    hookups: [...new Set(explains.flatMap((f) => f.hookups))],
    moments: [...new Set(explains.flatMap((f) => f.moments))],
    fix: fixOf(station, first),
    ...(others.length > 0 && { orFix: others.map((act) => fixOf(station, act)) }),
  };
}

const numberOf = (station: Station, id: string | undefined): string =>
  (id === undefined ? undefined : findCable(station, id)?.number) ?? '';

const portsOf = ({ at }: Act): PortRef[] =>
  at.flatMap((place) => ('unit' in place && place.port !== undefined ? [{ unit: place.unit, port: place.port }] : []));

/** What is wrong where this act puts it right, without a full stop. */
function wrongWords(station: Station, act: Act): string {
  const [one, two] = act.cables.map((id) => numberOf(station, id));
  const [from, to] = portsOf(act).map((ref) => portName(station, ref));
  switch (act.kind) {
    case 'moved':
      return `${one} is in ${from} and belongs into ${to}`;
    case 'exchanged':
      return `${one} and ${two} are in each other’s place: ${one} belongs into ${to}, ${two} into ${from}`;
    case 'turned':
      return `${one} lies the wrong way round: its ends are not alike`;
    case 'mistaken':
      return `${one} lies where ${two} belongs, and ${two} where ${one} belongs`;
    case 'crossed':
      return act.cables.length > 1
        ? `${portName(station, { unit: portsOf(act)[0]?.unit ?? '' })} is connected the wrong way round: plus and minus are crossed on ${listed(act.cables.map((id) => numberOf(station, id)))}`
        : `the two cores of ${one} are crossed`;
    case 'switched':
      return act.words;
  }
}

/** What puts it right, as a name for the step. */
function fixOf(station: Station, act: Act): { name: string; change: Act['change'] } {
  const [one, two] = act.cables.map((id) => numberOf(station, id));
  const to = portsOf(act)[1];
  const names: Record<ActKind, string> = {
    moved: to ? `Put ${one} into ${portName(station, to)}` : `Move ${one}`,
    exchanged: `Exchange the plugs of ${one} and ${two}`,
    turned: `Lay ${one} the other way round`,
    mistaken: `Exchange ${one} and ${two}`,
    crossed: `Change over the cores of ${listed(act.cables.map((id) => numberOf(station, id)))}`,
    switched: act.words.replace(/ instead of .*$/, ''),
  };
  return { name: names[act.kind], change: act.change };
}

const listed = (names: readonly string[]): string =>
  names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)}` : (names[0] ?? '');

const capital = (sentence: string): string => sentence.slice(0, 1).toUpperCase() + sentence.slice(1);
