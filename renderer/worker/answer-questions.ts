import type { ThreadMessage } from './watched-thread.ts';

/** Makes this thread answer what it is asked; what is thrown meanwhile goes back with its stack. */
export function answerQuestions<Q, A>(answer: (question: Q) => A) {
  self.onmessage = ({ data }: MessageEvent<Q>) => self.postMessage(messageOf(data, answer));
}

function messageOf<Q, A>(question: Q, answer: (question: Q) => A): ThreadMessage<A> {
  try {
    return { answer: answer(question) };
  } catch (thrown) {
    // An error itself would arrive without its own name.
    const { name, message, stack } = thrown instanceof Error ? thrown : new Error(String(thrown));
    return { thrown: { name, message, stack } };
  }
}
