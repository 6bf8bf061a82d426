import { tell } from './questions.ts';

/** What can hurt someone, said briefly; printed under every sheet and shown on request. */
export const cautions: readonly string[] = [
  'Mains voltage inside a supply or a valve amplifier can kill: leave it to those who may open it, and follow the local electrical code.',
  'A battery can give hundreds of amperes into a short circuit: fuse it at its terminals.',
  'RF burns: never touch an antenna, a feed point or an open line while sending. Keep people at the distance that the local rules on RF exposure ask for.',
  'Transmitting needs a licence; its conditions stand above anything said here.',
  'An outdoor antenna needs an earth and lightning protection as the local code asks for; disconnect it before a storm.',
  'Relay lines of old amplifiers and valve equipment can carry more than 100 V.',
  'The maker’s manual stands above the figures of the shelf. Results are estimates from the figures entered.',
];

export const showCautions = (): void => {
  void tell('Cautions', 'The results are estimates from the figures entered.', { lines: cautions });
};
