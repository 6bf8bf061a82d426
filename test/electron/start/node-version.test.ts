import { expect, it } from 'vitest';
import { nodeTooOld } from '../../../electron/start/node-version.mjs';
import settings from '../../../package.json' with { type: 'json' };

it.each(['20.19.0', '20.20.2', '22.12.0', '24.1.0'])('%s will do', (version) => expect(nodeTooOld(version)).toBeNull());

it.each(['20.18.3', '18.20.0', '8.0.0'])('%s gets a sentence', (version) => {
  expect(nodeTooOld(version)).toContain(`needs Node 20.19 or newer; this is ${version}`);
});

it('asks for what package.json asks for', () => expect(settings.engines.node).toBe('>=20.19'));
