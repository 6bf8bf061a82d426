import { explain, type Finding, hookupsOf, portName, type Station, severities, survey } from '../../core/index.ts';
import { asJson, type Command, isAsked, surveying } from './command.ts';

export const check: Command = {
  summary: 'what is wrong, why, and what to do about it',
  forms: ['json'],
  options: ['hookup'],
  run({ station, options, progress }) {
    progress?.(surveying);
    const findings = explain(survey(station)).findings.filter((f) => f.hookups.some((h) => isAsked(options, h)));
    const grave = findings.some((f) => !f.accepted && (f.severity === 'danger' || f.severity === 'fault'));
    const text = options.form === 'json' ? asJson({ findings: findings.map(plain) }) : readable(station, findings);
    return { text, status: grave ? 1 : 0 };
  },
};

/** A finding as the JSON output documents it. */
function plain({
  id,
  rule,
  severity,
  title,
  message,
  why,
  advice,
  at,
  values,
  hookups,
  moments,
  causedBy,
  accepted,
  fix,
}: Finding) {
  const told = { id, rule, severity, title, message, why, advice, at, values, hookups, moments, causedBy, accepted };
  return { ...told, fix: fix?.name };
}

function readable(station: Station, findings: readonly Finding[]): string {
  if (findings.length === 0) return 'Nothing to report.\n';
  const roots = findings.filter((f) => f.causedBy === undefined);
  const counts = severities.map((s) => `${roots.filter((f) => f.severity === s).length} ${s}`).join(', ');
  return `${roots.map((root) => entry(station, root, findings)).join('\n')}\n${counts}\n`;
}

function entry(station: Station, root: Finding, findings: readonly Finding[]): string {
  const followers = findings.filter((f) => f.causedBy === root.id);
  const lines = [
    `${root.severity.toUpperCase()}  ${root.title}${root.accepted === undefined ? '' : `  (accepted: ${root.accepted})`}`,
    `  ${root.message}`,
    `  Where: ${placesOf(station, root)}${hookupsIn(station, root)}`,
    `  Why:   ${root.why}`,
    `  Do:    ${root.advice}`,
    ...[root.fix, ...(root.orFix ?? [])].flatMap((fix, i) =>
      fix ? [`  ${i === 0 ? 'Fix:  ' : 'Or:   '} ${fix.name} (a click in the app)`] : [],
    ),
    ...(followers.length > 0 ? ['  From this follows:'] : []),
    ...followers.map((f) => `    ${f.severity}: ${f.message}`),
  ];
  return `${lines.join('\n')}\n`;
}

function placesOf(station: Station, finding: Finding): string {
  const names = finding.at.map((place) => {
    if ('cable' in place) return station.cables.find((c) => c.id === place.cable)?.number ?? place.cable;
    if (place.port !== undefined) return portName(station, { unit: place.unit, port: place.port });
    return station.units.find((u) => u.id === place.unit)?.name ?? place.unit;
  });
  return [...new Set(names)].join(', ');
}

/** Said only where it isn't so in all of them. */
function hookupsIn(station: Station, finding: Finding): string {
  const all = hookupsOf(station);
  if (finding.hookups.length === all.length) return '';
  const names = all.filter((h) => finding.hookups.includes(h.id)).map((h) => `“${h.name}”`);
  return `, in ${names.join(' and ')}`;
}
