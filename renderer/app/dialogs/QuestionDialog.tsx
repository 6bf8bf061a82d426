import { useStore } from 'zustand';
import './dialog.css';
import { type Question, questionStore } from './questions.ts';
import { useShown } from './use-shown.ts';

/** The question that waits for an answer, if there is one. */
export function QuestionDialog() {
  const question = useStore(questionStore, (s) => s.question);
  return question && <Open key={question.title + question.text} question={question} />;
}

function Open({ question }: { question: Question }) {
  const dialog = useShown();
  const [first] = question.choices;
  const last = question.choices.at(-1);
  return (
    <dialog
      ref={dialog}
      className="dialog"
      aria-labelledby="question-title"
      onCancel={(event) => {
        event.preventDefault();
        if (first) question.answer(first.id);
      }}
    >
      <h2 id="question-title">{question.title}</h2>
      <p>{question.text}</p>
      {question.problems && (
        <ul className="dialog-problems" aria-label="Problems">
          {question.problems.map((problem) => (
            <li key={problem.place + problem.message}>
              <code>{problem.place}</code>
              <span>{problem.message}</span>
            </li>
          ))}
        </ul>
      )}
      {question.lines && (
        <ul className="dialog-lines">
          {question.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <div className="dialog-choices">
        {question.choices.map((choice) => (
          <button
            key={choice.id}
            type="button"
            className={choice === last ? 'button main' : 'button'}
            onClick={() => question.answer(choice.id)}
          >
            {choice.label}
          </button>
        ))}
      </div>
    </dialog>
  );
}
