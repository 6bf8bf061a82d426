import { rules as all } from '../../core/index.ts';
import { asJson, type Listing } from './command.ts';

export const rules: Listing = {
  summary: 'every rule: what it compares, what it says, why, and where its limits come from',
  forms: ['json'],
  list(form) {
    const listed = [...all].sort((a, b) => a.id.localeCompare(b.id));
    const told = listed.map(({ id, severity, title, compares, why, advice, source, messages }) => {
      return { id, severity, title, compares, messages, why, advice, source };
    });
    if (form === 'json') return asJson({ rules: told });
    return told
      .map((rule) =>
        [
          `${rule.id} (${rule.severity}): ${rule.title}`,
          ...Object.values(rule.messages).map((message) => `  Says:     ${message}`),
          `  Compares: ${rule.compares}`,
          `  Why:      ${rule.why}`,
          `  Do:       ${rule.advice}`,
          `  Source:   ${rule.source}`,
          '',
        ].join('\n'),
      )
      .join('\n');
  },
};
