/** Whether bytes are a whole file of a format, from its first bytes to its last: a browser that dies leaves half of one. */
export const isWhole: Readonly<Record<'pdf' | 'svg' | 'png', (bytes: Buffer) => boolean>> = {
  // ISO 32000-1, 7.5.2 and 7.5.5: the header, and the marker on the last line.
  pdf: (bytes) =>
    startsWith(bytes, '%PDF-') && /%%EOF\s*$/.test(bytes.toString('latin1', Math.max(0, bytes.length - 32))),
  svg: (bytes) => /^\s*(<\?xml[^>]*>\s*)?<svg[\s>][\s\S]*<\/svg>\s*$/.test(bytes.toString('utf8')),
  // ISO/IEC 15948, 5.2 and 11.2.5: the signature, and the chunk that ends it, of no data and always the same check sum.
  png: (bytes) => startsWith(bytes, '\x89PNG\r\n\x1a\n') && bytes.subarray(-12).equals(lastChunk),
};

const lastChunk = Buffer.from('0000000049454e44ae426082', 'hex');

const startsWith = (bytes: Buffer, text: string): boolean => bytes.toString('latin1', 0, text.length) === text;
