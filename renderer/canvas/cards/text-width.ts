/**
 * About how wide a text is in the drawing's font, in pixels. Cards are sized before anything is painted (and in tests,
 * where there is no font), so widths come from four classes of letters, rounded up a little.
 */
export function textWidth(text: string, sizePx: number, weight: 'normal' | 'bold' | 'mono' = 'normal'): number {
  if (weight === 'mono') return text.length * sizePx * 0.62;
  let em = 0;
  for (const letter of text) em += letterEm(letter);
  return em * sizePx * (weight === 'bold' ? 1.07 : 1);
}

function letterEm(letter: string): number {
  if ("iljI.,:;'|!·".includes(letter)) return 0.3;
  if ('ftr ()-/'.includes(letter)) return 0.38;
  if ('mwMW@%'.includes(letter)) return 0.88;
  if (letter >= 'A' && letter <= 'Z') return 0.67;
  return 0.58;
}
