/** A start tag, an end tag, the head, or text; what fits none of them is wrong. */
const piece =
  /<\?xml [^<>]*\?>\s*|<([A-Za-z][\w:.-]*)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?)>|<\/([A-Za-z][\w:.-]*)\s*>|([^<]+)/y;
const looseAmpersand = /&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[\da-fA-F]+);)/;

/** What keeps a text from being well-formed XML 1.0, as far as a program without a parser can see; nothing if it is. */
export function whatIsWrongWithXml(text: string): string[] {
  const open: string[] = [];
  piece.lastIndex = 0;
  while (piece.lastIndex < text.length) {
    const at = piece.lastIndex;
    const [whole, start, attributes, empty, end, words] = piece.exec(text) ?? [];
    if (whole === undefined) return [`no tag and no text: ${text.slice(at, at + 80)}`];
    if (looseAmpersand.test(words ?? attributes ?? '')) return [`a loose “&”: ${whole.slice(0, 80)}`];
    if (attributes && hasTwins(attributes)) return [`one attribute twice: ${whole.slice(0, 80)}`];
    if (start !== undefined && empty === '') open.push(start);
    if (end !== undefined && open.pop() !== end) return [`</${end}> closes what is not open`];
  }
  return open.length > 0 ? [`<${open.at(-1)}> is not closed`] : [];
}

function hasTwins(attributes: string): boolean {
  const names = [...attributes.matchAll(/([\w:.-]+)="/g)].map((m) => m[1]);
  return new Set(names).size < names.length;
}
