/** A label as it goes on in a sentence: `Works up to` gives `works up to`, `RF path` and `Ω` stay. */
export const lowerFirst = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
