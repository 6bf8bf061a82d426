import type { Port } from '../../../../core/index.ts';

/** What the choices of a port are called. */
export const portWords = {
  class: { dc: 'power', rf: 'RF', audio: 'audio', control: 'keying', data: 'data', earth: 'earth' },
  side: { left: 'left', right: 'right', top: 'upper side', bottom: 'lower side' },
  needed: { always: 'always', toSend: 'to send', optional: 'optional' },
} satisfies { [F in 'class' | 'side' | 'needed']: Record<Port[F], string> };
