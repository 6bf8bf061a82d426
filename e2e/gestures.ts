import type { Locator, Page } from '@playwright/test';
import { layCable, takeFromShelf } from './drawing.ts';

/** Works the screen by mouse and counts what the user does: a click, a drag and a filled field each count one. */
export class Gestures {
  count = 0;
  private readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async take(row: RegExp, name: string) {
    this.count++;
    await takeFromShelf(this.page, row, name);
  }

  async lay(from: [string, string], to: [string, string]) {
    this.count++;
    await layCable(this.page, from, to);
  }

  async click(what: Locator, position?: { x: number; y: number }) {
    this.count++;
    await what.click(position ? { position } : {});
  }

  async fill(field: Locator, text: string) {
    this.count++;
    await field.fill(text);
    await field.blur();
  }

  async choose(field: Locator, label: string) {
    this.count++;
    await field.selectOption({ label });
  }
}
