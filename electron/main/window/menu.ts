import type { MenuItemConstructorOptions } from 'electron';
import { say, type StringKey } from '../../../core/text/index.ts';
import { type Asked } from '../../bridge/desk.ts';

export interface MenuNeed {
  readonly platform: NodeJS.Platform;
  /** Whether the program is packed for people; else the developer tools are at hand. */
  readonly packed: boolean;
  readonly ask: (asked: Asked) => void;
}

/** An item that the page does. */
const asks = (need: MenuNeed, key: StringKey, kind: Exclude<Asked['kind'], 'opened'>, accelerator: string): MenuItemConstructorOptions => ({
  label: say(key),
  accelerator,
  click: () => { need.ask({ kind }); },
});

/** An item that the shell does by itself. */
const does = (key: StringKey, role: MenuItemConstructorOptions['role'] & string): MenuItemConstructorOptions => ({ label: say(key), role });

const BREAK: MenuItemConstructorOptions = { type: 'separator' };

/** The window's menu. The page hears of a key first; what it does with one by itself never comes here. */
export function menuTemplate(need: MenuNeed): MenuItemConstructorOptions[] {
  const mac = need.platform === 'darwin';
  const project: MenuItemConstructorOptions[] = [
    asks(need, 'shell.menu.new', 'new', 'CmdOrCtrl+N'),
    asks(need, 'shell.menu.open', 'open', 'CmdOrCtrl+O'),
    BREAK,
    asks(need, 'shell.menu.save', 'save', 'CmdOrCtrl+S'),
    asks(need, 'shell.menu.save-as', 'save-as', 'CmdOrCtrl+Shift+S'),
    BREAK,
    does('shell.menu.close', 'close'),
    ...(mac ? [] : [does('shell.menu.quit', 'quit')]),
  ];
  const edit: MenuItemConstructorOptions[] = [
    asks(need, 'shell.menu.undo', 'undo', 'CmdOrCtrl+Z'),
    asks(need, 'shell.menu.redo', 'redo', mac ? 'Cmd+Shift+Z' : 'Ctrl+Y'),
    BREAK,
    does('shell.menu.cut', 'cut'),
    does('shell.menu.copy', 'copy'),
    does('shell.menu.paste', 'paste'),
    does('shell.menu.select-all', 'selectAll'),
  ];
  const view: MenuItemConstructorOptions[] = [
    does('shell.menu.larger', 'zoomIn'),
    does('shell.menu.smaller', 'zoomOut'),
    does('shell.menu.as-made', 'resetZoom'),
    BREAK,
    does('shell.menu.full-screen', 'togglefullscreen'),
    ...(need.packed ? [] : [does('shell.menu.developer', 'toggleDevTools')]),
  ];
  return [
    ...(mac ? [{ label: say('shell.name'), submenu: [does('shell.menu.hide', 'hide'), BREAK, does('shell.menu.quit', 'quit')] }] : []),
    { label: say('shell.menu.file'), submenu: project },
    { label: say('shell.menu.edit'), submenu: edit },
    { label: say('shell.menu.view'), submenu: view },
  ];
}
