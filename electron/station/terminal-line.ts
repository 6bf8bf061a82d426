import type { WriteStream } from 'node:tty';
import type { Progress } from './command.ts';

/** A line at the bottom of a terminal that is written over as work goes on. */
interface TerminalLine {
  readonly progress: Progress;
  /** Takes the line away again. */
  readonly clear: () => void;
}

/** Often enough to be seen moving, seldom enough to cost nothing. */
const pauseMs = 100;

/** Says how far work is on a terminal; what is not a terminal, a file or a pipe, gets nothing. */
export function terminalLine(stream: Pick<WriteStream, 'isTTY' | 'columns' | 'write'>): TerminalLine {
  if (!stream.isTTY) return { progress: () => {}, clear: () => {} };
  let shown = '';
  let lastDoing = '';
  let lastMs = Number.NEGATIVE_INFINITY;
  const show = (text: string) => {
    const line = text.slice(0, (stream.columns || 80) - 1);
    stream.write(`\r${line.padEnd(shown.length)}`);
    shown = line;
  };
  return {
    progress(doing, done, of) {
      const now = performance.now();
      if (doing === lastDoing && now - lastMs < pauseMs) return;
      lastDoing = doing;
      lastMs = now;
      show(done === undefined ? `${doing} ...` : `${doing}: ${done} of ${of} ...`);
    },
    clear() {
      if (shown !== '') stream.write(`\r${' '.repeat(shown.length)}\r`);
      shown = '';
    },
  };
}
