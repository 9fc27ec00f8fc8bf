/** What may go over the bridge: the arguments and the reply of every message, held to the desk's own types. */
import { z } from 'zod';
import { type Desk, type FileId, type FolderId } from './desk.ts';
import { type NoticeName, type RequestName } from './names.ts';

/** Far over any project a person writes, as the disk has it; counted in UTF-16 units here, which are never more than the bytes. */
export const GREATEST_TEXT = 16 * 1024 * 1024;
const GREATEST_FILES = 20_000;

const id = (kind: string): RegExp => new RegExp(`^${kind}-[0-9a-f]{1,64}$`);
/** Ids are made by the machine: one word for its kind, a hyphen and lower-case hexadecimal. */
const fileId = z.custom<FileId>((value) => typeof value === 'string' && id('file').test(value));
const folderId = z.custom<FolderId>((value) => typeof value === 'string' && id('folder').test(value));
const draftId = z.string().regex(id('draft'));
const recentId = z.string().regex(id('recent'));

const text = z.string().max(GREATEST_TEXT);
const name = z.string().max(300);
const bytes = z.instanceof(Uint8Array);
const none = z.null();

const refused = z.strictObject({ ok: z.literal(false), message: z.string().min(1) });
const reply = <T extends z.ZodType>(value: T) => z.union([z.strictObject({ ok: z.literal(true), value }), refused]);

const opened = z.strictObject({ file: fileId, name, text });
const saved = z.union([
  z.strictObject({ kind: z.literal('saved') }),
  z.strictObject({ kind: z.literal('changed'), text }),
]);

interface Shape<A extends readonly unknown[], R> {
  readonly args: z.ZodType<A>;
  readonly reply: z.ZodType<R>;
}

/** Each request with the schema of its arguments, as one list, and of its reply. */
export const requests: { readonly [N in RequestName]: Shape<Readonly<Parameters<Desk[N]>>, Awaited<ReturnType<Desk[N]>>> } = {
  openProject: { args: z.tuple([]), reply: reply(opened.nullable()) },
  recentProjects: { args: z.tuple([]), reply: z.array(z.strictObject({ id: recentId, name, folder: z.string() })) },
  openRecent: { args: z.tuple([recentId]), reply: reply(opened) },
  saveProject: { args: z.tuple([fileId, text, z.boolean()]), reply: reply(saved) },
  saveProjectAs: { args: z.tuple([name, text]), reply: reply(opened.omit({ text: true }).nullable()) },
  keepDraft: { args: z.tuple([fileId.nullable(), text]), reply: reply(none) },
  dropDraft: { args: z.tuple([fileId.nullable()]), reply: reply(none) },
  drafts: { args: z.tuple([]), reply: z.array(z.strictObject({ id: draftId, name, text, kept: z.string() })) },
  takeDraft: { args: z.tuple([draftId]), reply: reply(z.strictObject({ project: opened.nullable(), text })) },
  throwDraft: { args: z.tuple([draftId]), reply: reply(none) },
  choosePackage: { args: z.tuple([name]), reply: reply(z.strictObject({ folder: folderId, name }).nullable()) },
  writePackage: {
    args: z.tuple([folderId, z.array(z.strictObject({ path: name, bytes })).min(1).max(GREATEST_FILES), z.array(name).max(100)]),
    reply: reply(none),
  },
  showPackage: { args: z.tuple([folderId]), reply: reply(none) },
  print: { args: z.tuple([bytes, name]), reply: reply(none) },
};

/** Each notice with the schema of its arguments. */
export const notices: { readonly [N in NoticeName]: z.ZodType<Readonly<Parameters<Desk[N]>>> } = {
  tellUnsaved: z.tuple([z.boolean()]),
  letClose: z.tuple([z.boolean()]),
};

/** What the machine asks of the page. */
export const asked = z.union([
  z.strictObject({ kind: z.enum(['new', 'open', 'save', 'save-as', 'undo', 'redo', 'close']) }),
  z.strictObject({ kind: z.literal('opened'), project: opened }),
]);
