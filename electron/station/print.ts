import { fstatSync, writeSync } from 'node:fs';
import { plainReason } from '../files/plain-reason.ts';

type Out = Pick<NodeJS.WriteStream, 'isTTY' | 'write' | 'on'> & { readonly fd: number };

/**
 * Writes all of a text to standard output or the error stream. The reason where it could not be written; null where it
 * was, or where whoever reads it has stopped early, as in `station rules | head`.
 */
export async function print(stream: Out, text: string): Promise<string | null> {
  try {
    if (isFile(stream)) writeAll(stream.fd, Buffer.from(text));
    else await send(stream, text);
    return null;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPIPE' ? null : plainReason(error);
  }
}

/** A file or a device such as `/dev/full`; neither a pipe nor a terminal. */
function isFile({ fd, isTTY }: Out): boolean {
  if (isTTY) return false;
  const about = fstatSync(fd);
  return about.isFile() || about.isCharacterDevice();
}

/** A disk that is nearly full takes a part; Node's own stream would take that for all of it. */
function writeAll(fd: number, bytes: Buffer): void {
  for (let at = 0; at < bytes.length; ) at += writeSync(fd, bytes, at);
}

function send(stream: Out, text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    stream.on('error', reject);
    stream.write(text, (error) => (error ? reject(error) : resolve()));
  });
}
