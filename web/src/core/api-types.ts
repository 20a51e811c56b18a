// Made from the records of jackwork.app by ApiTypes; change those, then run it again.
// Lengths in mm with y up, forces in N, angles in degrees.

// What a change puts into a file: words as typed, two numbers are a place.
export type FieldValue = string | number | boolean | FieldValue[] | { [field: string]: FieldValue };
