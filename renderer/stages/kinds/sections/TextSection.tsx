import { useState } from 'react';
import { type Problem, readKind, writeKind } from '../../../../core/index.ts';
import { useTyped } from '../../../store/typed.ts';
import { editKind, useEditing } from '../kind-editor.ts';

/** All of it as the text of its file, for what is quicker to write than to click. */
export function TextSection() {
  const { kind, connectors } = useEditing();
  const [typed, setTyped] = useState<string | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useTyped(typed !== null);
  const take = () => {
    const read = readKind(typed ?? '');
    if ('problems' in read) return setProblems(read.problems);
    editKind(() => read.kind, read.connectors);
    setTyped(null);
    setProblems([]);
  };
  const dismiss = () => {
    setTyped(null);
    setProblems([]);
  };
  return (
    <details className="kind-row">
      <summary>
        <span className="kind-row-title">As text</span>
      </summary>
      <div className="kind-row-form">
        <textarea
          className="input figure"
          rows={14}
          spellCheck={false}
          aria-label="The kind as the text of its file"
          aria-invalid={problems.length > 0}
          data-settled={typed === null}
          value={typed ?? writeKind({ kind, connectors })}
          onChange={(event) => setTyped(event.target.value)}
        />
        {typed !== null && problems.length === 0 && (
          <p className="soft small" role="status">
            The form does not have this yet.
          </p>
        )}
        {problems.length > 0 && (
          <ul className="dialog-problems" aria-label="Problems of the text">
            {problems.map((problem) => (
              <li key={problem.place + problem.message}>
                <code>{problem.place}</code>
                <span>{problem.message}</span>
              </li>
            ))}
          </ul>
        )}
        <p className="kind-row-buttons">
          <button type="button" className="button" disabled={typed === null} onClick={take}>
            Take the text
          </button>
          <button type="button" className="button" disabled={typed === null} onClick={dismiss}>
            Back to the form’s
          </button>
        </p>
      </div>
    </details>
  );
}
