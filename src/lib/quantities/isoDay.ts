/** A calendar day written `YYYY-MM-DD`. Days are never Date objects: a Date shifts with the time zone. */
export type IsoDay = `${number}-${number}-${number}`;
