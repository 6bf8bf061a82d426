import { parseQuantity, type QuantityKind } from '../../core/index.ts';
import { TextField } from './TextField.tsx';

interface Props {
  label: string;
  value: number;
  kind: QuantityKind;
  onCommit: (value: number) => void;
  format?: (value: number) => string;
  /** In the field's own unit. */
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
export function QuantityField({ label, value, kind, onCommit, format, least = -1e12, most = 1e12, after }: Props) {
  const written = format ? format(value) : plain(value, kind);
  const commit = (text: string) => {
    const parsed = parseQuantity(text, kind);
    if ('problem' in parsed) return parsed.problem;
    if (parsed.value < least) return `It has to be at least ${plain(least, kind)}.`;
    if (parsed.value > most) return `It has to be at most ${plain(most, kind)}.`;
    onCommit(parsed.value);
    return undefined;
  };
  return <TextField label={label} value={written} onCommit={commit} after={after} figures />;
}

/** A number as it can be typed in again: no rounding, the kind's own unit. */
function plain(value: number, kind: QuantityKind): string {
  const number = Number(value.toPrecision(10));
  return unitWords[kind] ? `${number} ${unitWords[kind]}` : String(number);
}
