/** On which side of the equator a zone of the IANA data lies, for seasons. */

export type Hemisphere = 'north' | 'south';

/** Zones south of the equator by area and city, after the coordinates of the IANA table zone1970.tab and its links. */
const southernCities = new Set(
  Object.entries({
    Africa: `Blantyre Brazzaville Bujumbura Dar_es_Salaam Gaborone Harare Johannesburg Kigali Kinshasa Luanda
      Lubumbashi Lusaka Maputo Maseru Mbabane Nairobi Windhoek`,
    America: `Araguaina Asuncion Bahia Belem Buenos_Aires Campo_Grande Catamarca Cordoba Coyhaique Cuiaba Eirunepe
      Fortaleza Guayaquil Jujuy La_Paz Lima Maceio Manaus Mendoza Montevideo Noronha Porto_Acre Porto_Velho
      Punta_Arenas Recife Rio_Branco Rosario Santarem Santiago Sao_Paulo`,
    Asia: 'Dili Jakarta Pontianak Jayapura Makassar Ujung_Pandang',
    Atlantic: 'South_Georgia St_Helena Stanley',
    Indian: 'Antananarivo Chagos Christmas Cocos Comoro Kerguelen Mahe Mauritius Mayotte Reunion',
    Pacific: `Apia Auckland Bougainville Chatham Easter Efate Enderbury Fakaofo Fiji Funafuti Galapagos Gambier
      Guadalcanal Kanton Marquesas Nauru Niue Norfolk Noumea Pago_Pago Pitcairn Port_Moresby Rarotonga Tahiti
      Tongatapu Wallis Samoa`,
  }).flatMap(([area, cities]) => cities.split(/\s+/).map((city) => `${area}/${city}`)),
);
const southernAreas = /^(?:(?:Antarctica|Australia|Chile|Brazil|America\/Argentina)\/|NZ$|NZ-CHAT$)/;

export function hemisphereOf(zone: string): Hemisphere {
  return southernCities.has(zone) || southernAreas.test(zone) ? 'south' : 'north';
}
