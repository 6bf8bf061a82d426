const reasons: Record<string, string> = {
  ENOENT: 'it is not there any more',
  EACCES: 'you may not use it (no permission)',
  EPERM: 'the system does not allow it; another program may have it open',
  EBUSY: 'another program has it open',
  EROFS: 'the place can only be read',
  ENOSPC: 'there is no space left',
  EISDIR: 'there is a folder of that name',
  ENOTDIR: 'the folder is not there any more',
  ENAMETOOLONG: 'its name is too long',
};

/** A file error as the end of a sentence. */
export function plainReason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return reasons[code] ?? (error instanceof Error ? error.message : String(error));
}
