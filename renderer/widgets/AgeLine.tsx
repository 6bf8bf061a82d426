import { type Computed, timeOf } from '../store/computed.ts';
import { AgeMark } from './AgeMark.tsx';
import { notSince } from './age-words.ts';
import './age.css';

interface Props<T> {
  of: Computed<T>;
  /** What it means here, where there is more to say. */
  children?: React.ReactNode;
}

/** What is to be known before reading on: that nothing was computed, or that what follows is from before. Else nothing. */
export function AgeLine<T>({ of, of: { is }, children }: Props<T>) {
  if (is === 'fresh' || is === 'passing') return null;
  if (is === 'computing')
    return (
      <p className="age-soon">
        <span className="screen-only">Computing…</span>
        <span className="print-only">Not computed yet: nothing is known here.</span>
      </p>
    );
  return (
    <p className="age-line">
      <AgeMark />
      <span>
        {of.is === 'old' ? (
          <>
            <b>{capital(notSince(of))}.</b> {children ?? `What follows is old, from ${timeOf(of.at)}.`}
          </>
        ) : (
          <>
            <b>Not computed.</b> {children ?? 'Nothing is known here; that is not to say that nothing is wrong.'}
          </>
        )}
      </span>
    </p>
  );
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
