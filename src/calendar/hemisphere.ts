/** On which side of the equator a zone of the IANA data lies, for seasons. */

export type Hemisphere = 'north' | 'south';

/** Zones south of the equator by area and city, after the coordinates of the IANA table zone1970.tab and its links. */
const southern = [
  /^Antarctica\//,
  /^Australia\//,
  /^Pacific\/(?:Apia|Auckland|Bougainville|Chatham|Easter|Efate|Enderbury|Fakaofo|Fiji|Funafuti|Galapagos|Gambier|Guadalcanal|Kanton|Marquesas|Nauru|Niue|Norfolk|Noumea|Pago_Pago|Pitcairn|Port_Moresby|Rarotonga|Tahiti|Tongatapu|Wallis|Samoa)$/,
  /^(?:NZ|NZ-CHAT|Chile\/.*|Brazil\/.*)$/,
  /^America\/(?:Araguaina|Argentina\/.*|Asuncion|Bahia|Belem|Buenos_Aires|Campo_Grande|Catamarca|Cordoba|Coyhaique|Cuiaba|Eirunepe|Fortaleza|Guayaquil|Jujuy|La_Paz|Lima|Maceio|Manaus|Mendoza|Montevideo|Noronha|Porto_Acre|Porto_Velho|Punta_Arenas|Recife|Rio_Branco|Rosario|Santarem|Santiago|Sao_Paulo)$/,
  /^Africa\/(?:Blantyre|Brazzaville|Bujumbura|Dar_es_Salaam|Gaborone|Harare|Johannesburg|Kigali|Kinshasa|Luanda|Lubumbashi|Lusaka|Maputo|Maseru|Mbabane|Nairobi|Windhoek)$/,
  /^Indian\/(?:Antananarivo|Chagos|Christmas|Cocos|Comoro|Kerguelen|Mahe|Mauritius|Mayotte|Reunion)$/,
  /^Atlantic\/(?:South_Georgia|St_Helena|Stanley)$/,
  /^Asia\/(?:Dili|Jakarta|Pontianak|Jayapura|Makassar|Ujung_Pandang)$/,
];

export function hemisphereOf(zone: string): Hemisphere {
  return southern.some((each) => each.test(zone)) ? 'south' : 'north';
}
