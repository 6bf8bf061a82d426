import { Readable } from 'node:stream';
import { type CommandResult, run } from '../../electron/station/run.ts';

/** A command line as it runs, without a process of its own; `input` is what stands on standard input. */
export async function runLine(
  args: readonly string[],
  input = '',
): Promise<CommandResult & { said: string[]; told: string[] }> {
  const said: string[] = [];
  const told: string[] = [];
  const outcome = await run(args, {
    input: () => Readable.from(input === '' ? [] : [Buffer.from(input)]),
    say: (sentence) => said.push(sentence),
    progress: (doing, done, of) => told.push(`${doing} ${done ?? ''}/${of ?? ''}`),
  });
  return { ...outcome, said, told };
}
