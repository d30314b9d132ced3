/** Stands under every table and chart that leaves this house. */
export const CAUTION =
  'Teaching aid, not advice on a patient. Read the label of the device; follow local codes and licensed practice.';
