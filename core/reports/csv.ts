/**
 * A table as CSV by RFC 4180: CRLF line ends, quotes where they are needed. Text that a spreadsheet would take for a
 * formula gets an apostrophe before it; numbers stay numbers.
 */
export function writeCsv(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return [head, ...rows]
    .map((row) => row.map(field).join(','))
    .join('\r\n')
    .concat('\r\n');
}

function field(value: string | number): string {
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
