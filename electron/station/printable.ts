/**
 * Text from outside as it may go to a terminal: without the control characters by which a name could colour, clear or
 * answer it, and without those that turn the direction of reading. CommandLine ends and tabs stay.
 */
export const printable = (text: string): string => text.replace(/(?![\t\n])[\p{Cc}\p{Bidi_Control}]/gu, '');

/** The same as part of a sentence: on one line, and no longer than anybody would read. */
export function oneLine(text: string, most = 200): string {
  const line = printable(text.replace(/\s+/g, ' '));
  return line.length > most ? `${line.slice(0, most)} ...` : line;
}

/** A name from outside in a sentence. */
export const quoted = (name: string): string => `“${oneLine(name)}”`;
