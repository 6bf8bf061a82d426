import type { DesktopBridge } from './bridge.ts';
import type { StationFiles } from './station-files.ts';

/** Files by way of the desktop shell, which asks for places and writes safely. */
export function desktopFiles(bridge: DesktopBridge): StationFiles {
  return {
    async open() {
      const answer = await bridge.openFile();
      if (!answer || 'error' in answer) return answer;
      return { name: answer.name, place: answer.path, text: answer.text, stamp: answer.stamp };
    },
    async save({ text, file, suggestedName, askWhere }) {
      const path = askWhere || typeof file?.place !== 'string' ? null : file.place;
      const stamp = (path !== null && file?.stamp) || null;
      const answer = await bridge.saveFile({ text, path, stamp, suggestedName: file?.name ?? suggestedName });
      return answer && 'path' in answer ? { name: answer.name, place: answer.path, stamp: answer.stamp } : answer;
    },
    async look({ place, stamp }) {
      return typeof place === 'string' && stamp ? bridge.lookAtFile({ path: place, stamp }) : null;
    },
  };
}
