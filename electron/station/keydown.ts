import { formatDbm, formatMs, formatWatts, type KeydownReport } from '../../core/index.ts';
import { asJson, type Command, isPressed } from './command.ts';
import { textTable } from './text-table.ts';

export const keydown: Command = {
  summary: 'what happens when a control is pressed and let go, millisecond by millisecond',
  forms: ['json'],
  options: ['hookup', 'control'],
  run({ report, options }) {
    const asked = report.keydowns.filter((k) => isPressed(options, k));
    if (options.form === 'json') return { text: asJson({ keydowns: asked }), status: 0 };
    return {
      text: asked.length > 0 ? asked.map(textOf).join('\n') : 'Nothing to press: the station has no control.\n',
      status: 0,
    };
  },
};

const pauses = { dit: 'between dits', letter: 'between letters', word: 'between words', none: 'not before the end' };

function heardLine({ name, deafMs, againMs, pause, unmuted }: KeydownReport['listening'][number]): string {
  const own = unmuted ? ` Your own RF comes to it unmuted for ${formatMs(unmuted.ms)}, ${formatDbm(unmuted.dbm)}.` : '';
  return `${name}: deaf from ${formatMs(deafMs)} to T+${Number(againMs.toFixed(2))}; heard ${pauses[pause]}.${own}`;
}

function textOf(k: KeydownReport): string {
  const events = [
    { atMs: 0, text: `${k.controlName} pressed` },
    { atMs: k.releasedMs, text: `${k.controlName} let go` },
    ...k.events
      .filter((e) => `${e.unit}.${e.actor}` !== k.control)
      .map((e) => ({
        atMs: e.atMs,
        text: `${e.name} ${e.on ? 'on' : 'off'}${e.bounceMs > 0 ? `, bounces ${formatMs(e.bounceMs)}` : ''}`,
      })),
  ].sort((a, b) => a.atMs - b.atMs);
  const rows = events.map(({ atMs, text }) => [
    formatMs(atMs),
    atMs >= k.releasedMs ? `T+${Number((atMs - k.releasedMs).toFixed(2))}` : '',
    text,
  ]);
  const rf = k.rf
    ? `RF (${formatWatts(k.rf.watts)}) from ${formatMs(k.rf.fromMs)} to ${formatMs(k.rf.toMs)}: ${formatMs(k.rf.toMs - k.rf.fromMs)} of a press of ${formatMs(k.releasedMs)} (a dit is ${formatMs(k.ditMs)}).`
    : 'No RF.';
  const end = k.settled ? '' : '\nIt does not settle: this went on until it was stopped.';
  return `${k.hookupName}: ${k.controlName}\n\n${textTable(['At', 'T', 'What'], rows, 'Nothing happens.')}\n${[rf, ...k.listening.map(heardLine)].join('\n')}${end}\n`;
}
