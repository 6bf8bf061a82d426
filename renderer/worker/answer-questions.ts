import type { Progress, ThreadMessage } from './watched-thread.ts';

/** Tells whoever asked how far it is. */
export type Tell = (progress: Progress) => void;

/** Makes this thread answer what it is asked; what is thrown meanwhile goes back with its stack. */
export function answerQuestions<Q, A>(answer: (question: Q, tell: Tell) => A) {
  const tell: Tell = (progress) => self.postMessage({ progress });
  self.onmessage = ({ data }: MessageEvent<Q>) => self.postMessage(messageOf(() => answer(data, tell)));
}

function messageOf<A>(answer: () => A): ThreadMessage<A> {
  try {
    return { answer: answer() };
  } catch (thrown) {
    // An error itself would arrive without its own name.
    const { name, message, stack } = thrown instanceof Error ? thrown : new Error(String(thrown));
    return { thrown: { name, message, stack } };
  }
}
