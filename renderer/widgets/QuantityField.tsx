import { parseQuantity, type QuantityKind, quantityBounds } from '../../core/index.ts';
import { TextField } from './TextField.tsx';

interface Props {
  label: string;
  value: number;
  kind: QuantityKind;
  onCommit: (value: number) => void;
  format?: (value: number) => string;
  /** Narrower limits than a document has for such a quantity, in the field's own unit; they are shown while it is edited. */
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

/** A number with its unit; what people type (`20 ft`, `13,8`, `200 mW`) is understood or refused with a sentence. */
export function QuantityField({ label, value, kind, onCommit, format, after, ...own }: Props) {
  const { least, most } = { ...quantityBounds[kind], ...own };
  const say = (n: number) => (format ? format(n) : plain(n, kind));
  const written = say(value);
  const limits = [
    own.least === undefined ? '' : `from ${say(own.least)}`,
    own.most === undefined ? '' : `to ${say(own.most)}`,
  ];
  const commit = (text: string) => {
    const parsed = parseQuantity(text, kind);
    if ('problem' in parsed) return parsed.problem;
    if (parsed.value < least) return `It has to be at least ${say(least)}.`;
    if (parsed.value > most) return `It has to be at most ${say(most)}.`;
    onCommit(parsed.value);
    return undefined;
  };
  return (
    <TextField
      label={label}
      value={written}
      onCommit={commit}
      after={after}
      hint={limits.filter(Boolean).join(' ')}
      figures
    />
  );
}

/** A number as it can be typed in again: no rounding, the kind's own unit. */
function plain(value: number, kind: QuantityKind): string {
  const number = Number(value.toPrecision(10));
  return unitWords[kind] ? `${number} ${unitWords[kind]}` : String(number);
}
