import style from './chart.css?inline';

/** Black on white, with letters that every system has: the file is for paper and other programs. */
const plain: Record<string, string> = {
  '--ink': '#000',
  '--soft': '#444',
  '--edge': '#bbb',
  '--control': '#777',
  '--card': '#fff',
  '--bar': '#fff',
  '--hi': '#000',
  '--text': 'Arial, Helvetica, sans-serif',
  '--figures': 'Arial, Helvetica, sans-serif',
};

/** The text of an SVG file that shows a chart as it is on the screen, with all that it needs inside. */
export function standaloneSvg(chart: SVGSVGElement, title: string): string {
  const copy = chart.cloneNode(true) as SVGSVGElement;
  const { x, y, width, height } = chart.viewBox.baseVal;
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  const rules = document.createElementNS(copy.namespaceURI, 'style');
  rules.textContent = style.replace(/var\((--[\w-]+)\)/g, (all, name: string) => plain[name] ?? all);
  const name = document.createElementNS(copy.namespaceURI, 'title');
  name.textContent = title;
  const paper = document.createElementNS(copy.namespaceURI, 'rect');
  for (const [key, value] of Object.entries({ x, y, width, height, fill: '#fff' })) {
    paper.setAttribute(key, String(value));
  }
  copy.prepend(name, rules, paper);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(copy)}\n`;
}
