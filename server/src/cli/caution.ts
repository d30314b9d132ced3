/** Closes every report a person reads. */
export const CAUTION =
  'A teaching aid, not advice on a patient. Read the device label; follow local codes and licensed practice.';
