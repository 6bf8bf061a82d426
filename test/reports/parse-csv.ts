/** The cells of a CSV text by RFC 4180, section 2; lines may end in CRLF or LF. */
export function parseCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  const field = /("(?:[^"]|"")*"|[^,\r\n]*)(,|\r?\n|$)/gy;
  while (field.lastIndex < text.length) {
    const [, cell = '', end] = field.exec(text) ?? [];
    rows.at(-1)?.push(cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell);
    if (end !== ',' && field.lastIndex < text.length) rows.push([]);
  }
  return rows;
}
