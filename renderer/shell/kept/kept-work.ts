import type { DocumentFile } from '../../store/document.ts';
import type { Brought, NotDone } from '../bridge.ts';

/** What is known of a document without reading its text. */
interface AboutWork {
  readonly title: string;
  readonly units: number;
  readonly cables: number;
  readonly file: DocumentFile | null;
}

/** A document with changes that are in no file yet, as it is handed over to be kept. */
export interface WorkToKeep {
  /** As it would be in its file; also where the reader would refuse it. */
  readonly text: string;
  readonly about: AboutWork;
}

/** The same as it is found again. */
export interface KeptEntry {
  readonly id: string;
  readonly text: string;
  /** Null where that is damaged. */
  readonly about: AboutWork | null;
  /** Milliseconds since 1970; null where nobody wrote it down. */
  readonly keptAt: number | null;
  /** Whether its file has become another since: perhaps it was saved, or somebody else was there. */
  readonly fileChanged: boolean;
}

/**
 * Where unsaved work outlives a crash, a kill, a power cut. A window has one document, and with it one entry at most:
 * the newest that was kept. The entry of a window that is alive is nobody else's business.
 */
export interface KeptWork {
  /** Whether several entries can come back at once, each in a window. */
  readonly hasWindows: boolean;
  /** What dead windows left, the newest first. `unasked` leaves out what was listed so before, in this run. */
  list(unasked: boolean): Promise<readonly KeptEntry[] | NotDone>;
  /** From here on it is the entry of the window where it comes back. */
  bringBack(entry: KeptEntry): Promise<Brought | NotDone>;
  throwAway(entry: KeptEntry): Promise<NotDone | null>;
  /** Keeps this window's document in place of what was kept of it before: all of it, or the older stays. */
  keep(work: WorkToKeep): Promise<NotDone | null>;
  /** This window's document is in its file, or not wanted. */
  forget(): Promise<void>;
}
