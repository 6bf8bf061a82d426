import type { Random } from '../random.ts';
import type { Mangling } from './mangling.ts';

/** A stretch somewhere in the bytes, short more often than long. */
function stretch(bytes: Buffer, random: Random): { from: number; to: number } {
  const from = random.below(bytes.length);
  const length = Math.ceil(bytes.length ** random.share());
  return { from, to: Math.min(bytes.length, from + length) };
}

const asText = (change: (text: string, random: Random) => string) => (bytes: Buffer, random: Random) =>
  Buffer.from(change(bytes.toString('utf8'), random), 'utf8');

const numbers = /(?<=: )-?\d[\d.eE+-]*/g;

/** One number of the text written in another way. */
function renumber(text: string, written: string, random: Random): string {
  const found = random.pick([...text.matchAll(numbers)]);
  return found ? text.slice(0, found.index) + written + text.slice(found.index + found[0].length) : text;
}

const oddNumbers = [
  '1e999',
  '-1e999',
  '-0',
  '0.0',
  '1E2',
  '1e-400',
  '0x1F',
  '007',
  'NaN',
  '+1',
  '1_000',
  '.5',
  '1,5',
] as const;

/** What happens to a file on a bad disk, in a bad transfer, in an editor. */
export const bytes: readonly Mangling[] = [
  {
    name: 'some bits are turned over',
    inBytes: (bytes, random) => {
      const turned = Buffer.from(bytes);
      for (let n = random.below(8); n >= 0; n--) {
        const at = random.below(turned.length);
        turned[at] = (turned[at] ?? 0) ^ (1 << random.below(8));
      }
      return turned;
    },
  },
  { name: 'cut off', inBytes: (bytes, random) => bytes.subarray(0, random.below(bytes.length + 1)) },
  {
    name: 'a stretch is missing',
    inBytes: (bytes, random) => {
      const { from, to } = stretch(bytes, random);
      return Buffer.concat([bytes.subarray(0, from), bytes.subarray(to)]);
    },
  },
  {
    name: 'a stretch is there twice',
    inBytes: (bytes, random) => {
      const { from, to } = stretch(bytes, random);
      return Buffer.concat([bytes.subarray(0, to), bytes.subarray(from)]);
    },
  },
  {
    name: 'a stretch is zeros',
    inBytes: (bytes, random) => {
      const { from, to } = stretch(bytes, random);
      return Buffer.from(bytes).fill(0, from, to);
    },
  },
  {
    name: 'strange bytes in between',
    inBytes: (bytes, random) => {
      const at = random.below(bytes.length);
      const strange = Buffer.from(Array.from({ length: 1 + random.below(40) }, () => random.below(256)));
      return Buffer.concat([bytes.subarray(0, at), strange, bytes.subarray(at)]);
    },
  },
  { name: 'a byte order mark', inBytes: (bytes) => Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), bytes]) },
  { name: 'in UTF-16', inBytes: (bytes) => Buffer.from(`\ufeff${bytes.toString('utf8')}`, 'utf16le') },
  { name: 'line ends of another system', inBytes: asText((text) => text.replaceAll('\n', '\r\n')) },
  { name: 'two files in one', inBytes: (bytes) => Buffer.concat([bytes, bytes]) },
  {
    name: 'a comment',
    inBytes: asText((text, random) => text.replace('\n', random.chance(0.5) ? ' // mine\n' : ' /* mine */\n')),
  },
  { name: 'a comma too many', inBytes: asText((text) => text.replace(/\n(\s*[}\]])/, ',\n$1')) },
  {
    name: 'a number written oddly',
    inBytes: asText((text, random) => renumber(text, random.one(oddNumbers), random)),
  },
  {
    name: 'brackets in brackets',
    inBytes: asText((text, random) => {
      const depth = random.one([20, 60, 70, 1000, 100_000]);
      return renumber(text, '['.repeat(depth) + (random.chance(0.7) ? ']'.repeat(depth) : ''), random);
    }),
  },
  {
    name: 'something else altogether',
    inBytes: (_, random) =>
      Buffer.from(
        random.one(['', ' ', 'null', '[]', '"station"', '{}', '12', '<svg/>', '%PDF-1.7', '\0\0\0', '{"format":']),
        'utf8',
      ),
  },
];
