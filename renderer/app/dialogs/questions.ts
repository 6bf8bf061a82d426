import { createStore } from 'zustand/vanilla';
import type { Problem } from '../../../core/index.ts';
import { oneAfterAnother } from '../one-after-another.ts';

export interface Question {
  readonly title: string;
  readonly text: string;
  /** Problems of a file, each with its place. */
  readonly problems?: readonly Problem[];
  readonly lines?: readonly string[];
  /** Last is what Enter does; the first is what Escape does. */
  readonly choices: readonly { readonly id: string; readonly label: string }[];
  readonly answer: (choice: string) => void;
}

/** The question that waits for an answer. */
export const questionStore = createStore<{ question: Question | null }>(() => ({ question: null }));

/** Asks, once what was asked before is answered, and gives the id of the choice; Escape is the first one. */
export function ask(question: Omit<Question, 'answer'>): Promise<string> {
  return oneAtATime(() => {
    return new Promise((resolve) => {
      const answer = (choice: string) => {
        questionStore.setState({ question: null });
        resolve(choice);
      };
      questionStore.setState({ question: { ...question, answer } });
    });
  });
}

const oneAtATime = oneAfterAnother();

/** Says something that only needs to be read. */
export const tell = (title: string, text: string, more: Pick<Question, 'problems' | 'lines'> = {}): Promise<string> =>
  ask({ title, text, ...more, choices: [{ id: 'ok', label: 'Close' }] });
