/** The log: one JSON object a line on standard error, without notes' text, names or the bot's token. */

export const logLevels = ['debug', 'info', 'warn', 'error'] as const;
export type LogLevel = (typeof logLevels)[number];

/** What a line may tell beside its event: counts, durations, codes, keys of our own. Never what someone wrote. */
export type LogFields = Readonly<Record<string, string | number | boolean | null | undefined>>;

export interface Log {
  debug(event: string, fields?: LogFields): void;
  info(event: string, fields?: LogFields): void;
  warn(event: string, fields?: LogFields): void;
  error(event: string, fields?: LogFields): void;
}

interface LogTarget {
  readonly level: LogLevel;
  readonly write: (line: string) => void;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

const TOKEN = /(?<!\d)\d{3,20}:[\w-]{20,100}/g;

export function createLog({ level, write, now }: LogTarget): Log {
  const from = logLevels.indexOf(level);
  const at =
    (name: LogLevel) =>
    (event: string, fields: LogFields = {}): void => {
      if (logLevels.indexOf(name) < from) return;
      const line = JSON.stringify({ at: new Date(now()).toISOString(), level: name, event, ...fields });
      write(`${line.replace(TOKEN, '(token)')}\n`);
    };
  return { debug: at('debug'), info: at('info'), warn: at('warn'), error: at('error') };
}

export const silentLog: Log = createLog({ level: 'error', write: () => undefined, now: () => 0 });

/** An error for the log: its name, code and where it came from, not its message, which may quote a note. */
export function traced(error: unknown): LogFields {
  if (!(error instanceof Error)) return { error: typeof error };
  const code = (error as NodeJS.ErrnoException).code;
  const frames = (error.stack ?? '').split('\n').filter((line) => line.startsWith('    at '));
  return {
    error: error.name,
    ...(typeof code === 'string' ? { code } : {}),
    trace: frames
      .slice(0, 6)
      .map((line) => line.trim().replace(/^at /, ''))
      .join(' < '),
  };
}
