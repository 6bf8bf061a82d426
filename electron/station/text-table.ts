/** A table in columns for a terminal; numbers to the right. Nothing but a sentence where it has no rows. */
export function textTable(head: readonly string[], given: readonly (readonly string[])[], empty: string): string {
  // A note of several lines would break out of its column.
  const rows = given.map((row) => row.map((cell) => cell.replace(/[\t\r\n]+/g, ' ')));
  if (rows.length === 0) return `${empty}\n`;
  const widths = head.map((title, i) => Math.max(title.length, ...rows.map((row) => row[i]?.length ?? 0)));
  const right = head.map((_, i) => rows.every((row) => /^[−-]?[\d.∞–]|^$/.test(row[i] ?? '')));
  const line = (row: readonly string[]) =>
    row
      .map((cell, i) => (right[i] ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0)))
      .join('  ')
      .trimEnd();
  return [line(head), widths.map((w) => '-'.repeat(w)).join('  '), ...rows.map(line), ''].join('\n');
}
