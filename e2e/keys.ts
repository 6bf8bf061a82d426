import { expect, type Locator, type Page } from '@playwright/test';

/** Works the screen by keys alone. */
export class Keys {
  private readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  press = (key: string) => this.page.keyboard.press(key);

  /** Goes to, does or sets down what has these words. */
  async find(words: string) {
    await this.press('Control+k');
    await this.chooseFrom(this.page.getByRole('dialog', { name: 'Find' }), words);
  }

  /** Joins the port that has the keyboard to the likeliest one with these words; none for the likeliest of all. */
  async join(words = '') {
    await this.press('Enter');
    await this.chooseFrom(this.page.getByRole('dialog', { name: /^Join/ }), words);
  }

  async chooseFrom(dialog: Locator, words: string) {
    await expect(dialog).toBeVisible();
    await this.page.keyboard.type(words);
    await this.press('Enter');
    await expect(dialog).toHaveCount(0);
  }

  /** Presses Tab until the element has the keyboard. */
  async tabTo(element: Locator) {
    // Found once, as long as it stays: to find it anew after each press would take longer than the press.
    let found = await element.elementHandle();
    for (let i = 0; i < 200; i++) {
      if (!(await found?.evaluate((node) => node.isConnected))) found = await element.elementHandle();
      if (await found?.evaluate((node) => node === document.activeElement)) return;
      await this.press('Tab');
    }
    throw new Error('Tab does not get there');
  }

  isOn = (element: Locator): Promise<boolean> => element.evaluate((node) => node === document.activeElement);

  async fill(field: Locator, text: string) {
    await this.tabTo(field);
    await this.press('Control+a');
    await this.page.keyboard.type(text);
    await this.press('Enter');
  }
}
