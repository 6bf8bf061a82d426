import type { Mark, Station } from '../../station/schema/schema.ts';
import { type ChangeLine, fieldWords, pairById, type Wording } from './change-line.ts';

/** Notes and zones that come, go, or are otherwise. */
export function paperLines(before: Station, after: Station): ChangeLine[] {
  const { added, removed, changed } = pairById(before.marks ?? [], after.marks ?? []);
  return [
    ...removed.map((mark) => ({ words: `${nameOf(mark)} goes`, at: [] })),
    ...changed.flatMap(({ was, is }) =>
      [...fieldWords(wording, was, is), ...placeWords(was, is)].map((words) => ({
        words: `${nameOf(was)}: ${words}`,
        at: [],
      })),
    ),
    ...added.map((mark) => ({ words: `New ${nameOf(mark, 'note', 'zone')}`, at: [] })),
  ];
}

const wording: Wording<Pick<Mark, 'type' | 'text'>> = {
  type: ['sort', (type) => type],
  text: ['text', (text) => `“${text}”`],
};

function placeWords(was: Mark, is: Mark): string[] {
  const isMoved = was.position.x !== is.position.x || was.position.y !== is.position.y;
  const isSized = was.width !== is.width || was.height !== is.height;
  return [...(isMoved ? ['moves'] : []), ...(isSized ? [`size ${sizeOf(was)} → ${sizeOf(is)}`] : [])];
}

const sizeOf = ({ width, height }: Mark): string => `${width} × ${height}`;

const nameOf = ({ type, text }: Mark, note = 'Note', zone = 'Zone'): string =>
  `${type === 'note' ? note : zone} “${text}”`;
