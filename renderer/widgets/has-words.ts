/** Whether a text has every word of what is typed, whatever the case. */
export const hasWords = (text: string, typed: string): boolean =>
  typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.toLowerCase().includes(word));
