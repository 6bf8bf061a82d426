import { counted } from '../../../../core/index.ts';
import { useEditing } from '../kind-editor.ts';

interface Props {
  /** `ports[2]`: where problems of it are. */
  place: string;
  title: string;
  note?: string;
  onRemove: () => void;
  onMove?: ((by: 1 | -1) => void) | undefined;
  children: React.ReactNode;
}

/** One thing of a list: its name, and when it is opened, its form. */
export function ItemRow({ place, title, note, onRemove, onMove, children }: Props) {
  const { problems } = useEditing();
  const own = problems.filter((p) => p.place === place || p.place.startsWith(`${place}.`));
  return (
    <details className="kind-row" id={`kind-${place}`}>
      <summary>
        <span className="kind-row-title">{title}</span>
        {note && <span className="soft small">{note}</span>}
        {own.length > 0 && <span className="kind-row-wrong">{counted(own.length, 'problem')}</span>}
      </summary>
      <div className="kind-row-form">
        {children}
        {own.map((problem) => (
          <p key={problem.place + problem.message} className="field-problem">
            {problem.message}
          </p>
        ))}
        <p className="kind-row-buttons">
          {onMove && (
            <>
              <button type="button" className="link small" onClick={() => onMove(-1)} aria-label={`Move ${title} up`}>
                Up
              </button>
              <button type="button" className="link small" onClick={() => onMove(1)} aria-label={`Move ${title} down`}>
                Down
              </button>
            </>
          )}
          <button type="button" className="link small" onClick={onRemove} aria-label={`Remove ${title}`}>
            Remove
          </button>
        </p>
      </div>
    </details>
  );
}
