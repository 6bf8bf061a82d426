const { checkKeys } = require('./strict.cjs');

const keys = ['id', 'label', 'accelerator', 'registerAccelerator', 'click', 'role', 'submenu', 'type', 'enabled'];
const roles = ['appMenu', 'windowMenu', 'help', 'about', 'quit', 'close', 'cut', 'copy', 'paste', 'togglefullscreen'];

/** The menu as data: it is never seen, but its items can be found and chosen. */
function createMenu({ app, BrowserWindow }) {
  let applicationMenu = null;

  class MenuItem {
    constructor(options) {
      checkKeys('MenuItem', options, keys);
      if (options.role && !roles.includes(options.role.toString()))
        throw new Error(`electron stand-in: menu role '${options.role}' is not covered`);
      if (!options.label && !options.role && options.type !== 'separator')
        throw new Error('a menu item needs a label, a role or a type');
      const { click, submenu, ...rest } = options;
      Object.assign(this, { enabled: true }, rest);
      this.submenu = submenu ? Menu.buildFromTemplate(submenu) : undefined;
      this.click = () => this.#choose(click);
    }

    #choose(click) {
      if (!this.enabled) throw new Error(`the menu item '${this.label}' is disabled`);
      if (this.role === 'quit') return app.quit();
      if (this.role === 'close') return BrowserWindow.getFocusedWindow()?.close();
      if (this.role) throw new Error(`electron stand-in: choosing the role '${this.role}' is not covered`);
      return click?.(this, BrowserWindow.getFocusedWindow() ?? undefined, {});
    }
  }

  class Menu {
    constructor(items) {
      this.items = items;
    }

    static buildFromTemplate(template) {
      return new Menu(template.map((options) => new MenuItem(options)));
    }

    static setApplicationMenu(menu) {
      applicationMenu = menu;
    }

    static getApplicationMenu() {
      return applicationMenu;
    }

    getMenuItemById(id) {
      for (const item of this.items) {
        const found = item.id === id ? item : item.submenu?.getMenuItemById(id);
        if (found) return found;
      }
      return null;
    }
  }

  return Menu;
}

module.exports = { createMenu };
