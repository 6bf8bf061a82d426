import { asKept, type Limit, limitProblem, parseQuantity, type QuantityKind } from '../../core/index.ts';
import { TextField } from './TextField.tsx';

interface Props {
  label: string;
  value: number;
  /** What such a figure can be, by the table that files are read by; its unit is the field's. */
  limit: Limit;
  onCommit: (value: number) => void;
  format?: (value: number) => string;
  /** Narrower limits than a document has for such a figure, in the field's own unit. */
  least?: number;
  most?: number;
  after?: React.ReactNode;
}

const unitWords: Record<QuantityKind, string> = {
  V: 'V',
  A: 'A',
  W: 'W',
  dBm: 'dBm',
  dB: 'dB',
  ohm: 'Ω',
  m: 'm',
  ms: 'ms',
  Hz: 'Hz',
  number: '',
};

/** Limits that nobody comes near are said only to who does. */
const wide = 100_000;

/** A number with its unit; what people type (`20 ft`, `13,8`, `200 mW`) is understood or refused with a sentence. */
export function QuantityField({ label, value, limit, onCommit, format, after, ...own }: Props) {
  const row = { ...limit, ...own };
  const kind = limit.unit === 'share' ? 'number' : limit.unit;
  const say = (n: number) => (format ? format(n) : plain(n, kind));
  const commit = (text: string) => {
    const parsed = parseQuantity(text, kind);
    if ('problem' in parsed) return parsed.problem;
    const kept = asKept(parsed.value, limit);
    const problem = limitProblem(kept, row, say);
    if (problem === undefined) onCommit(kept);
    return problem;
  };
  return (
    <TextField
      label={label}
      value={say(value)}
      onCommit={commit}
      after={after}
      hint={row.most - row.least < wide ? `from ${say(row.least)} to ${say(row.most)}` : ''}
      figures
    />
  );
}

/** A number as it can be typed in again: no rounding, the kind's own unit. */
function plain(value: number, kind: QuantityKind): string {
  const number = Number(value.toPrecision(10));
  return unitWords[kind] ? `${number} ${unitWords[kind]}` : String(number);
}
