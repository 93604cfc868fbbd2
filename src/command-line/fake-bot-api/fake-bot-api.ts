/** A Bot API on loopback for tests, drills and benches: real offsets, faults on demand, a clock of its own. */
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { callsOn, type FakeState, Refusal } from './calls.js';
import { type Fault, type FaultPlan, noFaults } from './fault.js';
import { UpdateQueue } from './update-queue.js';

/** In the form of a real one, and nobody's. */
export const fakeToken = '4711000001:AAfakefakefakefakefakefakefakefakefa';

export interface FakeBotApi extends FakeState {
  /** For `BOT_API_ROOT`. */
  readonly root: string;
  faultPlan: FaultPlan;
  /** Every call, in order, faulty ones among them. */
  readonly called: { readonly method: string; readonly at: number }[];
  close(): Promise<void>;
}

/** Starts it on a free port; `now` (ms since 1970) dates messages. */
export async function startFakeBotApi(now: () => number = () => performance.timeOrigin + performance.now()) {
  const state: FakeState = {
    queue: new UpdateQueue(),
    sent: [],
    answeredTaps: [],
    actions: [],
    edited: [],
    files: new Map(),
    commands: [],
    webhook: '',
    nextMessage: 1_000_000,
    now,
  };
  const calls: Readonly<Record<string, (args: never) => unknown>> = callsOn(state);
  const called: FakeBotApi['called'] = [];
  const server = createServer((request, response) => {
    answer(request, response).catch(() => response.destroy());
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const fake: FakeBotApi = Object.assign(state, {
    root: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    faultPlan: noFaults,
    called,
    async close() {
      state.queue.dropPoll();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  });

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const path = decodeURI(request.url ?? '');
    const file = path.startsWith(`/file/bot${fakeToken}/files/`) ? path.split('/').at(-1) : undefined;
    if (file !== undefined) return void response.end(state.files.get(file));
    const method = path.startsWith(`/bot${fakeToken}/`) ? (path.split('/')[2] ?? '') : '';
    const args = await argsOf(request);
    called.push({ method, at: performance.now() });
    const fault = method === '' ? unauthorized : fake.faultPlan(method, args);
    if (fault?.fault === 'cut') return void request.socket.destroy();
    if (fault?.fault === 'rubbish') return void response.end('<html>so sorry</html>');
    if (fault?.fault === 'error')
      return reply(response, fault.code, errorOf(fault.code, fault.description, fault.parameters));
    if (method === 'getUpdates') response.on('close', () => response.writableEnded || state.queue.dropPoll());
    const { status, body } = await outcomeOf(method, args);
    if (fault?.fault === 'lost') return void request.socket.destroy();
    if (fault?.fault === 'slow') await sleep(fault.ms);
    reply(response, status, body);
  }

  async function outcomeOf(method: string, args: object): Promise<{ status: number; body: object }> {
    try {
      const call = calls[method];
      if (!call) throw new Refusal(404, 'Not Found');
      return { status: 200, body: { ok: true, result: await call(args as never) } };
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
      return { status: refusal.code, body: errorOf(refusal.code, refusal.description) };
    }
  }

  return fake;
}

const unauthorized: Fault = { fault: 'error', code: 401, description: 'Unauthorized' };

function errorOf(code: number, description: string, parameters?: object): object {
  return { ok: false, error_code: code, description, ...(parameters ? { parameters } : {}) };
}

function reply(response: ServerResponse, status: number, body: object): void {
  response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(body));
}

/** JSON, or a form with uploads as grammy sends it: then strings hold JSON where they can. */
async function argsOf(request: IncomingMessage): Promise<Record<string, unknown>> {
  const parts: Uint8Array[] = [];
  for await (const part of request) parts.push(part as Uint8Array);
  const body = Buffer.concat(parts);
  const type = request.headers['content-type'] ?? '';
  if (body.length === 0) return {};
  if (!type.startsWith('multipart/')) return JSON.parse(body.toString()) as Record<string, unknown>;
  const fields: Record<string, unknown> = formFields(body, /boundary="?([^";]+)/.exec(type)?.[1] ?? '');
  // An upload is named by a field `attach://ID`, its bytes by a field ID.
  return Object.fromEntries(
    Object.entries(fields).map(([name, value]) => [
      name,
      typeof value === 'string' && value.startsWith('attach://') ? fields[value.slice(9)] : value,
    ]),
  );
}

/** Node's own parser of forms refuses the headers that grammy writes, which the real Bot API takes. */
function formFields(body: Buffer, boundary: string): Record<string, unknown> {
  const parts = body.toString('latin1').split(`--${boundary}`).slice(1, -1);
  return Object.fromEntries(
    parts.map((part) => {
      const end = part.indexOf('\r\n\r\n');
      const headers = part.slice(0, end);
      const content = Buffer.from(part.slice(end + 4, -2), 'latin1');
      const file = /filename="?([^";\r]*)/i.exec(headers)?.[1];
      const name = /\bname="?([^";\r]*)/i.exec(headers)?.[1] ?? '';
      return [name, file === undefined ? plain(content.toString()) : new File([content], file)];
    }),
  );
}

function plain(value: string): unknown {
  try {
    return JSON.parse(value) as unknown;
  } catch {
    return value;
  }
}
