/** Keeps a backup of each day while the program runs. */
import type { Clock } from '../calendar/clock.js';
import { localDay } from '../calendar/zone.js';
import { type Log, traced } from '../log.js';
import { backUp, backupsIn } from './backups.js';
import type { Database } from './database.js';

const LOOK_EVERY_MS = 3_600_000;
/** The start has better things to do first. */
const FIRST_LOOK_MS = 20_000;

export interface DailyBackupPorts {
  readonly database: Database;
  readonly dataFolder: string;
  readonly clock: Clock;
  readonly zone: string;
  readonly log: Log;
}

/** Makes the day's backup where it is missing, and looks again every hour; answers how to stop. */
export function keepDailyBackups(ports: DailyBackupPorts): () => Promise<void> {
  let underWay = Promise.resolve();
  const look = () => {
    underWay = backUpToday(ports);
  };
  const first = setTimeout(look, FIRST_LOOK_MS);
  const hourly = setInterval(look, LOOK_EVERY_MS);
  return async () => {
    clearTimeout(first);
    clearInterval(hourly);
    await underWay;
  };
}

async function backUpToday({ database, dataFolder, clock, zone, log }: DailyBackupPorts): Promise<void> {
  const today = localDay(clock.now(), zone);
  if (backupsIn(dataFolder).some(({ day }) => day === today)) return;
  try {
    await backUp(database, dataFolder, today);
    log.info('backed up', { day: today });
  } catch (fault) {
    log.error('not backed up', traced(fault));
  }
}
