import { z } from 'zod';
import type { DesktopBridge } from '../../renderer/shell/bridge.ts';
import { aboutSchema } from '../files/kept-files.ts';
import type { Call } from './channels.ts';

const nothing = z.tuple([]);
// Longer than any system allows: what a file can't have is cut or told where it is written, never refused here.
const fileName = z.string().min(1).max(100_000);
const filePath = z.string().min(1).max(100_000);
const fileStamp = z.strictObject({ modifiedMs: z.number(), size: z.number(), inode: z.number() });
const largestText = 200_000_000;
const keptDocument = z.tuple([z.strictObject({ id: z.uuid() })]);

/** What each call may bring. The page is ours, but a fault in it must not reach the disk. */
export const requests = {
  firstDocument: nothing,
  newWindow: nothing,
  openFile: nothing,
  saveFile: z.tuple([
    z.strictObject({
      text: z.string().max(largestText),
      path: filePath.nullable(),
      stamp: fileStamp.nullable(),
      suggestedName: fileName,
    }),
  ]),
  lookAtFile: z.tuple([z.strictObject({ path: filePath, stamp: fileStamp })]),
  exportFile: z.tuple([
    z.strictObject({
      suggestedName: fileName,
      content: z.string().max(largestText),
      encoding: z.enum(['utf8', 'base64']),
    }),
  ]),
  listKept: z.tuple([z.strictObject({ unasked: z.boolean() })]),
  bringBack: keptDocument,
  throwAway: keptDocument,
  keepWork: z.tuple([z.strictObject({ text: z.string().max(largestText), about: aboutSchema })]),
  forgetWork: nothing,
  print: nothing,
  savePdf: z.tuple([z.strictObject({ suggestedName: fileName })]),
  saveEnded: z.tuple([z.strictObject({ saved: z.boolean() })]),
} satisfies { [Name in Call]: z.ZodType<Parameters<DesktopBridge[Name]>> };

export const documentState = z.strictObject({
  name: z.string(),
  path: filePath.nullable(),
  edited: z.boolean(),
});
