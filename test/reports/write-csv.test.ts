import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { buyTable } from '../../core/reports/buy/buy-table.ts';
import { whatToBuy } from '../../core/reports/buy/what-to-buy.ts';
import { cableTable } from '../../core/reports/cables/cable-table.ts';
import { listCables } from '../../core/reports/cables/list-cables.ts';
import { flagsOf, flagTable } from '../../core/reports/flags/flag-text.ts';
import { makeTable } from '../../core/reports/make/make-table.ts';
import { whatToMake } from '../../core/reports/make/what-to-make.ts';
import type { ReportTable } from '../../core/reports/report-table.ts';
import { writeCsv } from '../../core/reports/write-csv.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { needs } from '../needs.ts';
import { sample } from '../stations/samples.ts';
import { parseCsv } from './parse-csv.ts';

describe('CSV by RFC 4180', () => {
  it.each([
    // Section 2, rules 5 to 7: fields with quotes, commas and line breaks are in quotes, quotes doubled.
    ['quotes', 'x "y"', '"x ""y"""'],
    ['commas', 'p,q', '"p,q"'],
    ['line breaks', 'line\nbreak', '"line\nbreak"'],
    ['a number', 1.5, '1.5'],
    ['a negative number', -5, '-5'],
    ['no number', Number.POSITIVE_INFINITY, ''],
    ['text that is a number keeps its zeros in quotes', '007', '"007"'],
    ['or its sign', '+3.5', '"+3.5"'],
    ['equals', '=1+1', "'=1+1"],
    ['at', '@SUM(A1)', "'@SUM(A1)"],
    ['plus', '+cmd', "'+cmd"],
    ['minus', '-5 V', "'-5 V"],
    ['tab', '\tx', '"\'\tx"'],
    ['return', '\rx', '"\'\rx"'],
    ['new line', '\nx', '"\'\nx"'],
    ['full-width equals', '＝1', "'＝1"],
    ['both', '=HYPERLINK("x","y")', '"\'=HYPERLINK(""x"",""y"")"'],
    ['inside a text it is harmless', 'a=b', 'a=b'],
    // Where a comma is the decimal sign, programs split at semicolons and tabs, whatever the file was meant as.
    ['semicolons', 'p;q', '"p;q"'],
    ['tabs', 'p\tq', '"p\tq"'],
    ['a list with dashes', 'p;\n- q', '"p;\n\'- q"'],
  ] as [string, string | number, string][])('%s', (_name, value, written) =>
    expect(writeCsv(['a', 'b'], [[value, 'z']])).toBe(`a,b\r\n${written},z\r\n`),
  );
});

describe('split as other regions split it', () => {
  /** A line as a program splits it for which quotes count only at the start of a cell. */
  function cells(csv: string, separator: string): string[] {
    const found: string[] = [];
    let cell = '';
    let quoted = false;
    for (let i = 0; i < csv.length; i++) {
      const c = csv[i]!;
      if (quoted && c === '"' && csv[i + 1] === '"') cell += csv[i++];
      else if (quoted && c === '"') quoted = false;
      else if (quoted) cell += c;
      else if (c === '"' && cell === '') quoted = true;
      else if (c === separator || c === '\r' || c === '\n') {
        found.push(cell);
        cell = '';
      } else cell += c;
    }
    return [...found, cell];
  }
  const beginnings = ['=', '+', '-', '@', '＝', '"=', '""=', '\t=', '\r=', '\n-'];
  it.each([',', ';', '\t'])('no cell begins a formula with %j between cells', (separator) => {
    for (const before of ['', 'a', 'a,', 'a"'])
      for (const between of [',', ';', '\t', '\r\n', '\n', ';\t', ';;'])
        for (const beginning of beginnings) {
          const csv = writeCsv(['a', 'b'], [['first', `${before}${between}${beginning}cmd`, 'last']]);
          for (const cell of cells(csv, separator)) expect(cell, JSON.stringify(csv)).not.toMatch(/^\s*[=+\-@＝]/);
        }
  });
});

/** The hut with names and notes that a careless table would break. */
function awkward(): Station {
  const hut = sample('hut');
  const notes = ['=1+1', 'a,b; "c"', 'x\ty', 'two\nlines', '@home', '-5 V', 'grün · ohm Ω', '  spaces  ', "'quoted'"];
  return {
    ...hut,
    units: hut.units.map((u) => (u.id === 'meter' ? { ...u, name: '=Meter, "SWR"' } : u)),
    cables: hut.cables.map((c, i) => ({ ...c, note: notes[i % notes.length]!, number: i === 0 ? '007' : c.number })),
  };
}

const all = { leaveOutDone: false };
const station = awkward();
const tables: [string, ReportTable][] = [
  ['cables', cableTable(listCables(station))],
  ['make', makeTable(whatToMake(station, all))],
  ['buy', buyTable(whatToBuy(station, all))],
  ['flags', flagTable(flagsOf(station))],
];

/** Cells as they come back: numbers as numbers, text that was made harmless with its apostrophe. */
const asRead = ({ head, rows }: ReportTable): string[][] =>
  [head, ...rows].map((row) =>
    row.map((cell) =>
      typeof cell === 'string' && /^[=+\-@\t\r]/.test(cell) && !/^[+-]?\d+$/.test(cell) ? `'${cell}` : String(cell),
    ),
  );

describe('every table', () => {
  it.each(tables)('%s is read back as it was', (_name, table) =>
    expect(parseCsv(writeCsv(table.head, table.rows))).toEqual(asRead(table)),
  );
});

const folder = mkdtempSync(path.join(tmpdir(), 'csv-'));
afterAll(() => rmSync(folder, { recursive: true }));
const hasOffice = spawnSync('soffice', ['--version']).status === 0;

/** CSV of UTF-8 with quoted fields as text, by the numbers of LibreOffice's filter: comma, quote, UTF-8. */
const reader = 'CSV:44,34,76,1,,0,true,false';
const writer = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true';

function convert(file: string, to: string, out: string) {
  const profile = `-env:UserInstallation=file://${folder}/profile`;
  const { status, stderr } = spawnSync(
    'soffice',
    [profile, '--headless', `--infilter=${reader}`, '--convert-to', to, '--outdir', out, file],
    { encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(stderr);
}

describe('in a spreadsheet program', () => {
  it('LibreOffice reads every table and gives it back without loss', {
    timeout: 120_000,
    ...needs('LibreOffice', hasOffice),
  }, () => {
    mkdirSync(path.join(folder, 'back'));
    for (const [name, table] of tables) {
      const file = path.join(folder, `${name}.csv`);
      writeFileSync(file, writeCsv(table.head, table.rows));
      convert(file, 'ods', folder);
      convert(path.join(folder, `${name}.ods`), writer, path.join(folder, 'back'));
      expect(parseCsv(readFileSync(path.join(folder, 'back', `${name}.csv`), 'utf8')), name).toEqual(asRead(table));
    }
  });
});
