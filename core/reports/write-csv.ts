/**
 * A table as CSV by RFC 4180: CRLF line ends, quotes where they are needed. Text that a spreadsheet would take for a
 * formula gets an apostrophe before it, as it does not run then and all of it can be read; so does what would begin a
 * cell where a program splits at semicolons or tabs, as it does in regions with a decimal comma: quotes inside a cell
 * mean nothing to it. Numbers stay numbers; text that looks like one (`007`, `-5`) is in quotes, for programs that keep
 * quoted fields as text.
 */
export function writeCsv(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return [head, ...rows]
    .map((row) => row.map(field).join(','))
    .join('\r\n')
    .concat('\r\n');
}

/** Full-width forms too: some spreadsheets read them as the plain ones. */
const startsFormula = /^[=+\-@\t\r\n＝＋－＠]/;
const beginsFormulaInside = /[;\t\r\n](?="*[=+\-@＝＋－＠])/g;
const isNumber = /^[+-]?\d+(\.\d+)?$/;

function field(value: string | number): string {
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  if (isNumber.test(value)) return `"${value}"`;
  const inside = value.replace(beginsFormulaInside, "$&'");
  const safe = startsFormula.test(value) ? `'${inside}` : inside;
  return /[",;\t\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
