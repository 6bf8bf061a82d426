import { tell } from '../../app/dialogs/questions.ts';
import { download } from '../../shell/browser-files.ts';
import { suggestedName } from '../../shell/suggested-name.ts';
import { currentStation } from '../../store/document.ts';
import { pngBase64, svgText } from './drawing-picture.ts';

/** Hands the drawing over as an SVG file. */
export const exportSvg = async () => hand('.svg', await svgText(), 'utf8');

/** Hands the drawing over as a picture of pixels. */
export const exportPng = async () => hand('.png', await pngBase64(), 'base64');

async function hand(ending: string, content: string, encoding: 'utf8' | 'base64') {
  const name = suggestedName(currentStation().title).replace('.station.json', ending);
  const bridge = window.stationwright;
  if (!bridge) {
    const bytes = encoding === 'base64' ? Uint8Array.from(atob(content), (c) => c.charCodeAt(0)) : content;
    return download(bytes, name);
  }
  const saved = await bridge.exportFile({ suggestedName: name, content, encoding });
  if (saved && 'error' in saved) await tell('Not saved', saved.error);
}
