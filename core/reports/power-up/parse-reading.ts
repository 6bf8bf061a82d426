import { limitProblem, limits } from '../../quantity/limits.ts';
import { type ParsedQuantity, parseQuantity } from '../../quantity/parse-quantity.ts';
import { openOhms, type PowerUpQuantity } from './sheet.ts';

/**
 * What a person types from a meter: `13,8`, `120 mA`, `0.3 Ω`; `open` or `OL` where an ohmmeter shows no end; `1.5:1`
 * for an SWR. What can't be read comes back as a sentence.
 */
export function parseReading(text: string, quantity: PowerUpQuantity): ParsedQuantity {
  const read = parse(text, quantity);
  const problem = 'value' in read ? limitProblem(read.value, limits.reading) : undefined;
  return problem === undefined ? read : { problem };
}

function parse(text: string, quantity: PowerUpQuantity): ParsedQuantity {
  const clean = text.trim();
  if (quantity === 'ohm' && /^(open|o\.?l\.?|∞|inf|infinite)$/i.test(clean)) return { value: openOhms };
  if (quantity === 'V' || quantity === 'A' || quantity === 'ohm' || quantity === 'W') {
    const read = parseQuantity(clean, quantity);
    return 'value' in read && quantity !== 'V' && quantity !== 'A' && read.value < 0
      ? { problem: 'It can’t be less than 0.' }
      : read;
  }
  const ratio = /^(.+?)\s*:\s*1$/.exec(clean)?.[1] ?? /^1\s*:\s*(.+)$/.exec(clean)?.[1] ?? clean;
  const read = parseQuantity(ratio, 'number');
  return 'value' in read && read.value < 1 ? { problem: 'An SWR is 1 or more.' } : read;
}
