import { useEffect, useRef, useState } from 'react';
import { goToStep } from '../../store/document.ts';
import { useDocument } from '../../store/use-store.ts';
import { stepsId } from './open-steps.ts';
import './step-list.css';

/** Every step that was made and every one that was undone, in their order; choosing one goes there at once. */
export function StepList() {
  const [open, setOpen] = useState(false);
  return (
    <div
      id={stepsId}
      popover="auto"
      role="dialog"
      aria-label="Steps"
      className="steps"
      onBeforeToggle={(event) => placeBelowButton(event.currentTarget)}
      onToggle={(event) => setOpen(event.newState === 'open')}
    >
      {open && <List />}
    </div>
  );
}

function List() {
  const history = useDocument((d) => d.history);
  const list = useRef<HTMLOListElement>(null);
  const here = history.past.length;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the button of the present step is another one at each step
  useEffect(() => {
    list.current?.querySelector<HTMLElement>('[aria-current]')?.focus();
  }, [here]);
  const names = ['As opened', ...history.past.map((s) => s.name), ...history.future.map((s) => s.name)];
  return (
    <>
      <h2>Steps</h2>
      <ol ref={list} onKeyDown={moveFocus}>
        {names.map((name, done) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a step is its place in the list
          <li key={done}>
            <button
              type="button"
              className={done > here ? 'step undone' : 'step'}
              aria-current={done === here ? 'step' : undefined}
              onClick={() => goToStep(done)}
            >
              <small>{done === 0 ? '' : done}</small>
              <span>{name}</span>
              {done === here && <em>here</em>}
              {done > here && <em>undone</em>}
            </button>
          </li>
        ))}
      </ol>
      <p className="soft">{names.length === 1 ? 'Nothing was done yet.' : 'Arrow keys move, Enter goes there.'}</p>
    </>
  );
}

/** Arrow keys go from step to step; nothing is done before Enter. */
function moveFocus(event: React.KeyboardEvent<HTMLOListElement>) {
  const steps = [...event.currentTarget.querySelectorAll<HTMLElement>('.step')];
  const at = steps.indexOf(document.activeElement as HTMLElement);
  const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: steps.length - 1 }[event.key];
  if (to === undefined) return;
  event.preventDefault();
  steps[Math.max(0, Math.min(steps.length - 1, to))]?.focus();
}

/** What is in the top layer has no place of its own. */
function placeBelowButton(panel: HTMLElement) {
  const button = document.querySelector(`[popovertarget="${stepsId}"]`)?.getBoundingClientRect();
  if (!button) return;
  panel.style.top = `${button.bottom + 6}px`;
  panel.style.left = `${Math.max(8, Math.min(button.left, window.innerWidth - 308))}px`;
}
