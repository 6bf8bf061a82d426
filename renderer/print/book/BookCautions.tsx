import { cautions } from '../../app/dialogs/cautions.ts';

/** What can hurt someone. */
export function BookCautions() {
  return (
    <ul className="book-list">
      {cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}
