import type { Page } from '@playwright/test';
import { congruentialShares } from '../test/shares.ts';

interface Spot {
  /** A unit's id, `unit port`, or a cable's number. */
  readonly key: string;
  readonly x: number;
  readonly y: number;
}

const details = (page: Page) => page.getByRole('complementary', { name: 'Details' });

/** Edits by hand on the screen. Each is one step, and says what it did. */
export class RandomEdits {
  private readonly page: Page;
  private readonly random: () => number;

  constructor(page: Page, seed: number) {
    this.page = page;
    this.random = congruentialShares(seed);
  }

  /** `count` tells the edits apart: a name or length that it gives was never there before. */
  async make(count: number): Promise<string> {
    const edits = [
      ...Array(10).fill(() => this.takeFromShelf()),
      ...Array(20).fill(() => this.layCable()),
      ...Array(18).fill(() => this.drag()),
      ...Array(12).fill(() => this.moveByKey()),
      ...Array(10).fill(() => this.rename(`Renamed ${count}`)),
      ...Array(12).fill(() => this.setLength(`${(3 + count / 100).toFixed(2)} m`)),
      ...Array(6).fill(() => this.removeUnit()),
      ...Array(4).fill(() => this.removeCable()),
      ...Array(4).fill(() => this.duplicate()),
      ...Array(4).fill(() => this.paste()),
    ] as (() => Promise<string>)[];
    return this.pick(edits)();
  }

  private pick<T>(items: readonly T[]): T {
    const item = items[Math.floor(this.random() * items.length)];
    if (item === undefined) throw new Error('there is nothing to choose from');
    return item;
  }

  private async takeFromShelf() {
    const rows = this.page.getByRole('complementary', { name: 'Shelf' }).locator('.shelf-row');
    const row = rows.nth(Math.floor(this.random() * (await rows.count())));
    await row.click();
    return `take ${await row.locator('span').first().textContent()}`;
  }

  private async layCable() {
    const ports = await this.spots('port');
    const from = this.pick(ports);
    const unitOf = (spot: Spot) => spot.key.split(' ')[0];
    const to = this.pick(ports.filter((p) => unitOf(p) !== unitOf(from)));
    await this.page.mouse.click(from.x, from.y);
    await this.page.mouse.click(to.x, to.y);
    return `lay a cable from ${from.key} to ${to.key}`;
  }

  private async drag() {
    const card = this.pick(await this.spots('card'));
    const paper = await this.page.getByRole('main').boundingBox();
    if (!paper) throw new Error('there is no paper');
    // Towards the middle, so that nothing leaves the paper.
    const right = card.x < paper.x + paper.width / 2 ? 1 : -1;
    const down = card.y < paper.y + paper.height / 2 ? 1 : -1;
    const [dx, dy] = [right * (50 + this.random() * 120), down * (40 + this.random() * 90)];
    await this.page.mouse.move(card.x, card.y);
    await this.page.mouse.down();
    await this.page.mouse.move(card.x + dx, card.y + dy, { steps: 5 });
    await this.page.mouse.up();
    return `drag ${card.key}`;
  }

  private async moveByKey() {
    const unit = await this.selectUnit();
    const key = this.pick(['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown']);
    await this.page.keyboard.press(key);
    return `${key} on ${unit}`;
  }

  private async rename(name: string) {
    const unit = await this.selectUnit();
    const field = details(this.page).getByRole('textbox', { name: 'Name', exact: true });
    await field.fill(name);
    await field.press('Enter');
    return `rename ${unit} to ${name}`;
  }

  private async setLength(length: string) {
    const cable = await this.selectCable();
    const field = details(this.page).getByRole('textbox', { name: 'Length', exact: true });
    await field.fill(length);
    await field.press('Enter');
    return `${cable} is ${length} long`;
  }

  private async removeUnit() {
    const unit = await this.selectUnit();
    await this.page.keyboard.press('Delete');
    return `remove ${unit}`;
  }

  private async removeCable() {
    const cable = await this.selectCable();
    await this.page.keyboard.press('Delete');
    return `remove ${cable}`;
  }

  private async duplicate() {
    const unit = await this.selectUnit();
    await this.page.keyboard.press('Control+d');
    return `duplicate ${unit}`;
  }

  private async paste() {
    const unit = await this.selectUnit();
    await this.page.keyboard.press('Control+c');
    await this.page.keyboard.press('Control+v');
    return `copy and paste ${unit}`;
  }

  /** By keys, as someone without a mouse does. */
  private async selectUnit(): Promise<string> {
    const { key } = this.pick(await this.spots('card'));
    const node = this.page.locator(`.react-flow__node[data-id="${key}"]`);
    await node.focus();
    await node.press('Enter');
    return key;
  }

  private async selectCable(): Promise<string> {
    const flag = this.pick(await this.spots('flag'));
    await this.page.mouse.click(flag.x, flag.y);
    return flag.key;
  }

  /** Where the mouse would meet cards, ports or flags that nothing lies over, in the order of their names. */
  private async spots(what: 'card' | 'port' | 'flag'): Promise<Spot[]> {
    // Looked for among few: this happens before every edit.
    const fitButton = this.page.locator('.paper-tools').getByRole('button', { name: 'Fit', exact: true });
    return fitButton.evaluate(async (fit, wanted) => {
      (fit as HTMLButtonElement).click();
      const painted = () => new Promise((done) => requestAnimationFrame(done));
      // Fitted in the frame after the click, as nothing glides with reduced motion.
      await painted();
      const selectors = { card: '.react-flow__node .unit-head', port: '.react-flow__handle', flag: '.flag' };
      const keyOf = (element: Element) => {
        if (wanted === 'flag') return element.textContent ?? '';
        if (wanted === 'card') return element.closest('.react-flow__node')?.getAttribute('data-id') ?? '';
        return `${element.getAttribute('data-nodeid')} ${element.getAttribute('data-handleid')}`;
      };
      const look = () =>
        [...document.querySelectorAll(selectors[wanted])]
          .map((element) => {
            const box = element.getBoundingClientRect();
            return { element, key: keyOf(element), x: box.x + box.width / 2, y: box.y + box.height / 2 };
          })
          .filter(({ element, x, y }) => element.contains(document.elementFromPoint(x, y)))
          .map(({ key, x, y }) => ({ key, x, y }))
          .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.x - b.x || a.y - b.y));
      // A machine that is busy takes some frames more, and a click meets what is there when it comes.
      let found = look();
      for (let before = ''; before !== JSON.stringify(found); found = look()) {
        before = JSON.stringify(found);
        await painted();
      }
      return found;
    }, what);
  }
}
