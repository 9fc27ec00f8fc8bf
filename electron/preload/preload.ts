import { contextBridge, ipcRenderer } from 'electron';
import { DESK_NAME } from '../bridge/names.ts';
import { makeDesk } from './make-desk.ts';

contextBridge.exposeInMainWorld(DESK_NAME, makeDesk(ipcRenderer));
