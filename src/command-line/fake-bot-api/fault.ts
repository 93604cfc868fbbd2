/** Faults that the fake Bot API can be told to show, by call. */

export type Fault =
  /** An answer as the Bot API gives it when it will not. */
  | {
      readonly fault: 'error';
      readonly code: number;
      readonly description: string;
      readonly parameters?: { readonly retry_after?: number; readonly migrate_to_chat_id?: number };
    }
  /** The connection ends before anything is done. */
  | { readonly fault: 'cut' }
  /** It is done, and the connection ends before the answer. */
  | { readonly fault: 'lost' }
  /** Status 200, and no JSON. */
  | { readonly fault: 'rubbish' }
  /** It is done and answered, so many milliseconds later. */
  | { readonly fault: 'slow'; readonly ms: number };

/** Asked at every call; undefined lets it be. */
export type FaultPlan = (method: string, args: Readonly<Record<string, unknown>>) => Fault | undefined;

export const noFaults: FaultPlan = () => undefined;

export const faults = {
  blocked: { fault: 'error', code: 403, description: 'Forbidden: bot was blocked by the user' },
  conflict: {
    fault: 'error',
    code: 409,
    description:
      'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running',
  },
  unauthorized: { fault: 'error', code: 401, description: 'Unauthorized' },
  broken: { fault: 'error', code: 502, description: 'Bad Gateway' },
  cut: { fault: 'cut' },
  lost: { fault: 'lost' },
  rubbish: { fault: 'rubbish' },
} as const satisfies Record<string, Fault>;

export function slow(ms: number): Fault {
  return { fault: 'slow', ms };
}

export function tooFast(seconds: number): Fault {
  return {
    fault: 'error',
    code: 429,
    description: `Too Many Requests: retry after ${seconds}`,
    parameters: { retry_after: seconds },
  };
}

export function migrated(to: number): Fault {
  return {
    fault: 'error',
    code: 400,
    description: 'Bad Request: group chat was upgraded to a supergroup chat',
    parameters: { migrate_to_chat_id: to },
  };
}

/** Each of these faults once, in that order, for one method. */
export function inTurn(method: string, ...list: readonly Fault[]): FaultPlan {
  const left = [...list];
  return (called) => (called === method ? left.shift() : undefined);
}
