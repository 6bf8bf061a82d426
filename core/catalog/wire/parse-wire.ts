import type { Wire } from '../../station/schema/cable-kind.ts';

/** A wire's size as a person typed it, or a sentence that says what was wrong. */
export type ParsedWire = { readonly wire: Wire } | { readonly problem: string };

/** Gauges of copper wire go from 4/0 to 40 (ASTM B258). */
const thinnestAwg = 40;
const mostMm2 = 500;
const leastMm2 = 0.01;

/**
 * Reads a wire's size: `AWG 16`, `16 AWG`, `#16`, `2/0 AWG`, `1.5 mm2`, `1,5 mm²`. A bare number is refused, as it
 * could be either. Nothing is thrown: what can't be read comes back as a sentence.
 */
export function parseWire(text: string): ParsedWire {
  const clean = text.trim().toLowerCase().replace(/\s+/g, ' ');
  if (clean === '') return { problem: 'Nothing is entered.' };
  const gauge = /^(?:awg|#) ?(\d+)(\/0)?$/.exec(clean) ?? /^(\d+)(\/0)? ?(?:awg|ga|gauge)$/.exec(clean);
  if (gauge) return wireOfGauge(Number(gauge[1]), gauge[2] !== undefined);
  const area = /^(\d+(?:[.,]\d*)?|[.,]\d+) ?(?:mm2|mm²|sq ?mm|qmm)$/.exec(clean);
  if (area) return wireOfArea(Number((area[1] ?? '').replace(',', '.')));
  if (/^[\d.,]+$/.test(clean))
    return { problem: `Say what ${text.trim()} is: AWG ${text.trim()} or ${text.trim()} mm².` };
  return { problem: `“${text.trim()}” is not a wire size; write AWG 16 or 1.5 mm².` };
}

function wireOfGauge(number: number, aught: boolean): ParsedWire {
  const awg = aught ? 1 - number : number;
  if (awg > thinnestAwg) return { problem: `Gauges end at AWG ${thinnestAwg}.` };
  if (aught ? number < 1 || number > 4 : false) return { problem: 'Thick gauges go from 1/0 to 4/0.' };
  return { wire: { awg } };
}

function wireOfArea(mm2: number): ParsedWire {
  if (mm2 < leastMm2 || mm2 > mostMm2) return { problem: `It has to be from ${leastMm2} to ${mostMm2} mm².` };
  return { wire: { mm2 } };
}
