import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { severities } from '../../core/rules/finding.ts';
import { rules } from '../../core/rules/index.ts';
import type { Rule } from '../../core/rules/rule.ts';

const folder = path.join(import.meta.dirname, '../../core/rules');
const files = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name }) => readdirSync(path.join(folder, name)).map((file) => `${name}/${file.replace(/\.ts$/, '')}`));

const isRule = (value: unknown): value is Rule => typeof value === 'object' && value !== null && 'looksAt' in value;

const found = await Promise.all(
  files.map(async (id) => {
    const module: Record<string, unknown> = await import(pathToFileURL(path.join(folder, `${id}.ts`)).href);
    return { id, exported: Object.values(module) };
  }),
);
const inFolder = found.flatMap(({ id, exported }) => exported.filter(isRule).map((rule) => ({ id, rule })));

describe('folder, index and tests', () => {
  it('hold the same rules', () => {
    expect(inFolder.length).toBeGreaterThan(0);
    expect(inFolder.map(({ rule }) => rule.id).sort()).toEqual(rules.map((r) => r.id).sort());
  });
  it.each(found)('$id exports one rule and nothing else', ({ exported }) => {
    expect(exported.map(isRule)).toEqual([true]);
  });
  it.each(inFolder)('$id is the path of its rule, with a test of the same path', ({ id, rule }) => {
    expect(rule.id).toBe(id);
    expect(rules).toContain(rule);
    expect(existsSync(path.join(import.meta.dirname, `${id}.test.ts`))).toBe(true);
  });
  it('has no test without its rule', () => {
    const tests = readdirSync(import.meta.dirname, { recursive: true })
      .map(String)
      .filter((file) => file.includes(path.sep) && file.endsWith('.test.ts'))
      .map((file) => file.replace(/\.test\.ts$/, '').replaceAll(path.sep, '/'));
    expect(tests.filter((id) => !rules.some((rule) => rule.id === id))).toEqual([]);
  });
});

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  it('says what, why, what to do and on what ground', () => {
    for (const text of [rule.title, rule.compares, rule.why, rule.advice, rule.source]) {
      expect(text.trim().length).toBeGreaterThan(3);
    }
    expect(Object.keys(rule.messages).length).toBeGreaterThan(0);
    for (const message of Object.values(rule.messages)) expect(message).toMatch(/[.}]$/);
    expect(severities).toContain(rule.severity);
  });
  it('follows rules that stand before it', () => {
    const before = rules.slice(0, rules.indexOf(rule)).map((r) => r.id);
    for (const other of rule.follows) expect(before, `${id} follows ${other}`).toContain(other);
  });
});
