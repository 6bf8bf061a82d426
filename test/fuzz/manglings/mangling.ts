import type { JsonObject } from '../json.ts';
import type { Random } from '../random.ts';

/** One way to spoil a station file. */
export type Mangling = { readonly name: string } & (
  | {
      /** Changes the document in place; it may have been spoilt before. */
      readonly inDocument: (document: JsonObject, random: Random) => void;
    }
  | {
      /** What becomes of the file's bytes. */
      readonly inBytes: (bytes: Buffer, random: Random) => Buffer;
    }
);
