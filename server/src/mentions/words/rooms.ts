/** Places of a building that are called by a number, as "room 18G" and "lecture hall 4-0": no sizes. */
export const ROOM_BEFORE =
  /\b(?:rooms?|bays?|doors?|gates?|wards?|labs?|(?:lecture\s)?halls?|corridors?|floors?|lockers?|auditoriums?)\s$/i;
