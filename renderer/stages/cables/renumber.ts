import type { Cable } from '../../../core/index.ts';
import { change, currentStation } from '../../store/document.ts';

/** Gives a cable another number; a sentence where it can't have that one. */
export function renumber(cable: Pick<Cable, 'id'>, text: string): string | undefined {
  const number = text.trim();
  if (number === '') return 'A cable needs a number.';
  const isTaken = currentStation().cables.some((other) => other.id !== cable.id && other.number === number);
  if (isTaken) return `${number} is already taken.`;
  change({ type: 'updateCable', id: cable.id, set: { number } });
  return undefined;
}
