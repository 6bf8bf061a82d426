import { describe, expect, it } from 'vitest';
import { troubleReport } from '../../core/reports/trouble-report.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { sample } from '../stations/samples.ts';

describe('the report on a fault of the program', () => {
  const doing = 'surveying the station';
  const where = 'a test';

  it('says what was being done, what went wrong, and has the whole station', () => {
    const error = new RangeError('out of reach');
    const report = troubleReport({ doing, where, error, station: sample('hut') });
    expect(report).toContain('While surveying the station, on a test.');
    expect(report.match(/RangeError: out of reach/g)).toHaveLength(1);
    expect(report).toContain('trouble-report.test.ts');
    expect(report).toContain(writeStation(sample('hut')));
  });

  it.each([
    ['a path', 'at f (/srv/somebody/x/a.ts:3:1)', 'at f (a.ts:3:1)'],
    ['a drive', 'at C:\\Users\\somebody\\a.ts:3', 'at a.ts:3'],
    ['an address', 'at https://desk.example/b/a.js:3', 'at a.js:3'],
    ['an address with a port', 'at f (http://desk.example:8080/b/a.js:3:1)', 'at f (a.js:3:1)'],
    ['an address without a folder', 'at http://desk.example:8080/a.js:3', 'at a.js:3'],
    ['a file’s address', 'at file:///home/somebody/a.js:3', 'at a.js:3'],
  ])('keeps %s to the file’s name', (_name, stack, kept) => {
    const report = troubleReport({ doing, where, error: Object.assign(new Error('x'), { stack }), station: null });
    expect(report).toContain(kept);
    expect(report).not.toMatch(/somebody|desk\.example|8080/);
  });

  it.each([
    ['a text', 'stopped after 20 s', null, 'stopped after 20 s'],
    ['nothing', undefined, null, 'undefined'],
    ['an error without a stack', Object.assign(new Error('bare'), { stack: undefined }), null, 'Error: bare'],
    [
      'a station that can’t be written',
      'x',
      {
        get units() {
          throw new Error('no');
        },
      } as unknown as Station,
      'could not be written',
    ],
  ])('can be made of %s', (_name, error, station, says) => {
    expect(troubleReport({ doing, where, error, station })).toContain(says);
  });
});
