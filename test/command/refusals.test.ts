import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { commandNames, findCommand, optionsOf } from '../../electron/station/commands.ts';
import { optionNames, optionWords } from '../../electron/station/option-table.ts';
import { needsLinux } from '../needs.ts';
import { sampleText } from '../stations/samples.ts';
import { runLine } from './run-line.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'refusals-'));
afterAll(() => rmSync(folder, { recursive: true }));
function file(name: string, text: string | Uint8Array): string {
  const full = path.join(folder, name);
  writeFileSync(full, text);
  return full;
}
mkdirSync(path.join(folder, 'folder.json'));

/** Refused: nothing on standard output, a sentence without a trace, status 2. */
async function refused(args: readonly string[], input?: string): Promise<string> {
  const { out, err, status } = await runLine(args, input);
  expect([out, status]).toEqual(['', 2]);
  expect(err).toMatch(/^\S[\s\S]*\n$/);
  expect(err).not.toMatch(/\bat .*:\d+:\d+/);
  return err;
}

describe('a command line that can’t be followed', () => {
  it.each([
    [['frob', 'hut'], /no command “frob”; there are check, .*shelf/],
    [['constructor', 'hut'], /no command “constructor”/],
    [['check'], /Name a station file/],
    [['check', ''], /Name a station file/],
    [['check', 'hut', 'hill-table'], /One file at a time: “hill-table”/],
    [['check', 'hut', '--bogus'], /no option “--bogus”/],
    [['check', 'hut', '-x'], /no option “-x”/],
    [['check', 'hut', '--toString'], /no option “--toString”/],
    [['check', 'hut', '--no-json'], /no option “--no-json”/],
    [['check', 'hut', '--json=yes'], /--json stands alone/],
    [['budget', 'hut', '--json', '--csv'], /--json and --csv contradict each other/],
    [['check', 'hut', '--json', '--json'], /--json is there twice/],
    [['check', 'hut', '--hookup', 'air', '--hookup', 'dummy'], /--hookup is there twice/],
    [['check', 'hut', '--hookup'], /--hookup needs a value: --hookup NAME/],
    [['check', 'hut', '--hookup', ''], /--hookup needs a value/],
    [['check', 'hut', '--hookup= '], /--hookup needs a value/],
    [['check', 'hut', '--hookup', '--json'], /--hookup needs a value/],
    [['check', 'hut', '--hookup', 'Nowhere'], /no hook-up “Nowhere”; there are “On the dummy load”, “On the air”/],
    [['circuit', 'hut', '--moment', 'later'], /--moment is receive or sending, not “later”/],
    [['book', 'hut', '--paper', 'a5', '--out', 'b.pdf'], /--paper is a4 or letter, not “a5”/],
    [['keydown', 'hut', '--control', 'Nothing'], /no control “Nothing”; there are “/],
    [['rf', 'hut', '--control', 'Nothing', '--hookup', 'air'], /no control “Nothing” in “On the air”; there are “/],
    [['rules', 'hut'], /“rules” needs no file/],
    [['rules', '--hookup', 'air'], /no use for --hookup; it takes --json/],
    [[], /^Usage: /],
  ] as [string[], RegExp][])('%j', async (args, words) => expect(await refused(args)).toMatch(words));

  const useless = commandNames.flatMap((name) => {
    const taken = optionsOf(findCommand(name)!);
    return optionNames.filter((option) => !taken.includes(option)).map((option) => [name, option] as const);
  });
  it('every option that means nothing to a command is refused by it, by name', async () => {
    expect(useless.length).toBeGreaterThan(50);
    for (const [name, option] of useless) {
      const { value, oneOf } = optionWords(option);
      const words = value === undefined ? [`--${option}`] : [`--${option}`, oneOf?.[0] ?? 'x'];
      expect(await refused([name, 'hut', ...words]), name).toContain(`“${name}” has no use for --${option}`);
    }
    for (const pair of ['check --moment', 'budget --out', 'rf --todo', 'shelf --csv'])
      expect(useless.map(([name, option]) => `${name} --${option}`)).toContain(pair);
  });
});

describe('a file that can’t be read', () => {
  it.each([
    ['none', () => path.join(folder, 'nowhere.json'), /nowhere\.json: There is no such file/],
    ['a folder', () => path.join(folder, 'folder.json'), /there is a folder of that name/],
    ['an empty one', () => file('empty.json', ''), /There is nothing in it/],
    ['not text', () => file('picture.json', new Uint8Array([0x89, 0x50, 0xff, 0xfe])), /something other than text/],
    ['half of one', () => file('half.json', sampleText('hut').slice(0, 3000)), /\S: \S/],
    ['no station', () => file('list.json', '[]'), /\S: \S/],
    ['a bad figure', () => file('bad.json', sampleText('hut').replace('"lengthM": 0.8', '"lengthM": -1')), /lengthM: /],
  ] as [string, () => string, RegExp][])('%s', async (_name, make, words) =>
    expect(await refused(['check', make()])).toMatch(words),
  );
  it('one without end', needsLinux, async () =>
    expect(await refused(['check', '/dev/zero'])).toMatch(/larger than 50 MB/),
  );
  it('standard input with nothing on it', async () =>
    expect(await refused(['check', '-'])).toBe(
      'Standard input is not a station that can be read:\nstandard input: There is nothing in it.\n',
    ));
});

describe('what comes from outside', () => {
  const nasty = '\u001b[2J\u009b31m\u0007\u202e\rx\ny';
  it('can’t drive a terminal by a name in a sentence', async () => {
    const lines = [
      ['check', nasty],
      ['check', 'hut', nasty],
      [nasty],
      ['check', 'hut', `--${nasty}`],
      ['check', 'hut', '--hookup', nasty],
      ['keydown', 'hut', '--control', nasty],
      ['book', 'hut', '--out', `${nasty}.pdf/x.pdf`],
      ['book', 'hut', '--out', nasty],
      ['check', file('nasty.json', `{"${JSON.stringify(nasty).slice(1, -1)}": 1}`)],
    ];
    for (const line of lines) {
      const err = await refused(line);
      expect(err, JSON.stringify(line)).not.toMatch(/(?![\n])[\p{Cc}\p{Bidi_Control}]/u);
      expect(err).not.toMatch(/^y/m);
    }
  });
  it('is cut to a length that can be read', async () =>
    expect((await refused(['check', 'hut', '--hookup', 'x'.repeat(100_000)])).length).toBeLessThan(500));
});

describe('what is followed', () => {
  it('-h anywhere tells the usage, which names the options of each command', async () => {
    const { out, status } = await runLine(['check', 'hut', '--moment', 'later', '-h']);
    expect(status).toBe(0);
    expect(out).toMatch(/^ {2}--todo +without cables that are made or tested \(make, buy\)$/m);
    expect(out).toMatch(/^ {2}--out FILE +where it goes \(book, drawing\)$/m);
    expect(out).toMatch(/^ {2}--json +for other programs \(all but circuit, book, drawing\)$/m);
  });
  it('- is standard input', async () => {
    const [piped, named] = [
      await runLine(['cables', '-', '--csv'], sampleText('hut')),
      await runLine(['cables', 'hut', '--csv']),
    ];
    expect(piped).toEqual(named);
  });
  it('a keyboard is told how to end', async () => {
    const { Readable } = await import('node:stream');
    const { run } = await import('../../electron/station/run.ts');
    const keyboard = Object.assign(Readable.from([Buffer.from(sampleText('hut'))]), { isTTY: true });
    const said: string[] = [];
    const outside = { input: () => keyboard, say: (s: string) => said.push(s), progress: () => {} };
    expect((await run(['cables', '-'], outside)).status).toBe(0);
    expect(said).toEqual([expect.stringContaining('Ctrl-D')]);
  });
  it('a control goes by its name or id, in capitals or not', async () => {
    const all = JSON.parse((await runLine(['keydown', 'hut', '--json'])).out).keydowns;
    const { control, controlName } = all[0];
    for (const name of [control, controlName, controlName.toUpperCase()]) {
      const { keydowns } = JSON.parse((await runLine(['keydown', 'hut', '--json', '--control', name])).out);
      expect(keydowns).toEqual(all.filter((k: { control: string }) => k.control === control));
    }
  });
  it('long work tells what is done, and how far it is', async () => {
    expect((await runLine(['check', 'hut'])).told).toEqual(['surveying the station /']);
    expect((await runLine(['powerup', 'hill-table'])).told).toEqual([
      'surveying the station /',
      ...Array.from({ length: 10 }, (_, i) => `parts of the sheet done ${i}/10`),
    ]);
    const { told } = await runLine(['failures', 'hut-first-draft']);
    const counts = told.map((line) => /failures tried (\d+)\/(\d+)/.exec(line)!.slice(1).map(Number));
    expect(counts.map(([done]) => done)).toEqual(counts.map((_, i) => i + 1));
    expect(counts.at(-1)![0]).toBe(counts.at(-1)![1]);
  });
});
