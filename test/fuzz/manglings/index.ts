import { actors } from './actors.ts';
import { bytes } from './bytes.ts';
import { drawing } from './drawing.ts';
import { figures } from './figures.ts';
import type { Mangling } from './mangling.ts';
import { names } from './names.ts';
import { plan } from './plan.ts';
import { structure } from './structure.ts';

/** Every way to spoil a file, by subject. */
export const manglings: Readonly<Record<string, readonly Mangling[]>> = {
  bytes,
  structure,
  figures,
  drawing,
  actors,
  plan,
  names,
};
