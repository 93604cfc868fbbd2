/** The country, and where holidays differ inside it the part, whose holidays a zone of the IANA data keeps. */

/** A country by ISO 3166-1 and, where it matters, its part by ISO 3166-2. */
export interface Country {
  readonly code: string;
  readonly part?: string;
}

/** After the IANA table zone1970.tab; "Area/City" without its area where the line names the area. */
const zonesOf: Record<string, string> = {
  'GB-ENG': 'Europe/London GB',
  'GB-NIR': 'Europe/Belfast',
  IE: 'Europe/Dublin Eire',
  IM: 'Europe/Isle_of_Man',
  JE: 'Europe/Jersey',
  GG: 'Europe/Guernsey',
  US: `America/New_York America/Detroit America/Chicago America/Denver America/Phoenix America/Los_Angeles
    America/Anchorage America/Juneau America/Sitka America/Nome America/Adak America/Boise
    America/Menominee America/Metlakatla America/Yakutat Pacific/Honolulu`,
  CA: `America/Halifax America/Moncton America/Glace_Bay America/Goose_Bay America/Iqaluit America/Rankin_Inlet
    America/Resolute America/Dawson America/Dawson_Creek America/Fort_Nelson America/Inuvik
    America/Cambridge_Bay America/Swift_Current America/Whitehorse`,
  'CA-ON': 'America/Toronto America/Thunder_Bay America/Nipigon America/Atikokan',
  'CA-QC': 'America/Montreal',
  'CA-MB': 'America/Winnipeg',
  'CA-SK': 'America/Regina',
  'CA-AB': 'America/Edmonton',
  'CA-BC': 'America/Vancouver',
  'CA-NL': 'America/St_Johns',
  'AU-NSW': 'Australia/Sydney Australia/Lord_Howe Australia/Broken_Hill Australia/NSW',
  'AU-ACT': 'Australia/Canberra Australia/ACT',
  'AU-VIC': 'Australia/Melbourne Australia/Victoria',
  'AU-QLD': 'Australia/Brisbane Australia/Lindeman Australia/Queensland',
  'AU-SA': 'Australia/Adelaide Australia/South',
  'AU-WA': 'Australia/Perth Australia/Eucla Australia/West',
  'AU-TAS': 'Australia/Hobart Australia/Currie Australia/Tasmania',
  'AU-NT': 'Australia/Darwin Australia/North',
  NZ: 'Pacific/Auckland Pacific/Chatham NZ',
  ZA: 'Africa/Johannesburg',
  DE: 'Europe/Berlin Europe/Busingen',
  FR: 'Europe/Paris',
  NL: 'Europe/Amsterdam',
  BE: 'Europe/Brussels',
  LU: 'Europe/Luxembourg',
  AT: 'Europe/Vienna',
  CH: 'Europe/Zurich',
  IT: 'Europe/Rome',
  ES: 'Europe/Madrid Atlantic/Canary Africa/Ceuta',
  PT: 'Europe/Lisbon Atlantic/Madeira Atlantic/Azores',
  PL: 'Europe/Warsaw',
  CZ: 'Europe/Prague',
  SK: 'Europe/Bratislava',
  HU: 'Europe/Budapest',
  RO: 'Europe/Bucharest',
  BG: 'Europe/Sofia',
  GR: 'Europe/Athens',
  HR: 'Europe/Zagreb',
  SI: 'Europe/Ljubljana',
  RS: 'Europe/Belgrade',
  DK: 'Europe/Copenhagen',
  SE: 'Europe/Stockholm',
  NO: 'Europe/Oslo',
  FI: 'Europe/Helsinki',
  IS: 'Atlantic/Reykjavik',
  EE: 'Europe/Tallinn',
  LV: 'Europe/Riga',
  LT: 'Europe/Vilnius',
  UA: 'Europe/Kyiv Europe/Kiev',
  MT: 'Europe/Malta',
  CY: 'Asia/Nicosia',
  TR: 'Europe/Istanbul',
  JP: 'Asia/Tokyo',
  SG: 'Asia/Singapore',
  HK: 'Asia/Hong_Kong',
  MX: 'America/Mexico_City',
  BR: 'America/Sao_Paulo',
  AR: 'America/Argentina/Buenos_Aires',
  CL: 'America/Santiago',
  CO: 'America/Bogota',
  WS: 'Pacific/Apia',
  KE: 'Africa/Nairobi',
  NG: 'Africa/Lagos',
};

const countryOfZone = new Map<string, Country>(
  Object.entries(zonesOf).flatMap(([key, zones]) => {
    const [code = '', part] = key.split('-');
    const country: Country = part === undefined ? { code } : { code, part };
    return zones.split(/\s+/).map((zone): [string, Country] => [zone, country]);
  }),
);

/** Undefined for a zone of no country in the table, such as `UTC`. */
export function countryOf(zone: string): Country | undefined {
  const known = countryOfZone.get(zone);
  if (known) return known;
  if (/^US\/|^America\/(?:Indiana|Kentucky|North_Dakota)\//.test(zone)) return { code: 'US' };
  return zone.startsWith('Canada/') ? { code: 'CA' } : undefined;
}
