/** The environment is checked once, and each fault says what would do. */
import { describe, expect, it } from 'vitest';
import { readSettings, settingTable, SettingsFault } from '../src/settings.js';

function faultOf(environment: Record<string, string>): string {
  try {
    readSettings(environment);
  } catch (fault) {
    if (fault instanceof SettingsFault) return fault.message;
    throw fault;
  }
  return '';
}

const token = '4711000001:AAfakefakefakefakefakefakefakefakefa';

describe('settings', () => {
  it('need nothing', () => {
    const settings = readSettings({ XDG_DATA_HOME: '/var/lib/grower' });
    expect(settings).toMatchObject({
      botApiRoot: 'https://api.telegram.org',
      dataFolder: '/var/lib/grower/slipnote',
      growers: { kind: 'invited' },
      speech: { kind: 'best' },
      logLevel: 'info',
    });
    expect(settings.botToken).toBeUndefined();
  });

  it('are read as they are meant', () => {
    expect(
      readSettings({
        BOT_TOKEN: token,
        BOT_API_ROOT: 'http://localhost:8081/',
        SLIPNOTE_DATA: '/data',
        SLIPNOTE_GROWERS: '12, 34',
        SLIPNOTE_SPEECH: 'model:/models/small',
        SLIPNOTE_ZONE: 'Pacific/Apia',
        LOG_LEVEL: 'warn',
      }),
    ).toEqual({
      botToken: token,
      botApiRoot: 'http://localhost:8081',
      dataFolder: '/data',
      growers: { kind: 'listed', ids: ['12', '34'] },
      speech: { kind: 'model', folder: '/models/small' },
      zone: 'Pacific/Apia',
      logLevel: 'warn',
    });
  });

  it('that make no sense get one line each with name, value and what would do', () => {
    const lines = faultOf({
      SLIPNOTE_ZONE: 'Mars/Olympus',
      LOG_LEVEL: 'loud',
      SLIPNOTE_GROWERS: 'Bea',
    }).split('\n');
    expect(lines).toEqual([
      'SLIPNOTE_GROWERS is "Bea": it has to be user ids with commas, like 1200345,1200346, or anyone.',
      'SLIPNOTE_ZONE is "Mars/Olympus": it has to be a zone of the IANA list, like Europe/London.',
      'LOG_LEVEL is "loud": it has to be one of debug, info, warn, error.',
    ]);
  });

  it('never show a token, not even a wrong one', () => {
    const fault = faultOf({ BOT_TOKEN: 'sesame-4711000001-AAfakefake' });
    expect(fault).toMatch(/^BOT_TOKEN is … \(28 characters\): it has to be/);
    expect(fault).not.toContain('4711000001');
  });

  it('have a row each in the table that help and README come from', () => {
    expect(settingTable.map(({ name }) => name)).toEqual([
      'BOT_TOKEN',
      'BOT_API_ROOT',
      'SLIPNOTE_DATA',
      'SLIPNOTE_LEDGER',
      'SLIPNOTE_GROWERS',
      'SLIPNOTE_SPEECH',
      'SLIPNOTE_ZONE',
      'LOG_LEVEL',
    ]);
  });
});
