const oldest = [20, 19];

/**
 * A sentence if this Node is too old for the project, else null.
 * @param {string} version as in `process.versions.node`
 */
export function nodeTooOld(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [needMajor = 0, needMinor = 0] = oldest;
  if (major > needMajor || (major === needMajor && minor >= needMinor)) return null;
  return `Stationwright needs Node ${oldest.join('.')} or newer; this is ${version}. Install a newer Node from https://nodejs.org and try again.`;
}
